import { describe, expect, test } from "vitest";
import { allFillings } from "../../test-kit/all-fillings.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import { finished } from "../finished.ts";
import { type Assumption, assuming, type Outcome } from "./assumptions.ts";

type Filling = readonly number[];

const fillingsOf = (text: string): Filling[] => allFillings(compile(puzzleOf(text)));

const assumptionsIn = (text: string, solution: Filling): readonly Assumption[] =>
  finished(assuming(compile(puzzleOf(text)), Uint8Array.from(solution)));

/** The 576 Latin squares of order 4. */
const latin = fillingsOf(tiny(["sum-area: { cells: r1c1-r1c4, sum: 10 }"], { regions: "none" }));
const cells = Array.from({ length: 16 }, (_, cell) => cell);
const nameOf = (cell: number): string => `r${Math.floor(cell / 4) + 1}c${(cell % 4) + 1}`;

/** A puzzle and, worked out another way, all that the other reading of its rule permits. */
interface Case {
  readonly text: string;
  readonly otherwise: () => readonly Filling[];
}
type Make = (random: Random, filled: Filling) => Case;

const puzzle = (filled: Filling, given: readonly number[], rules: readonly string[]): string =>
  tiny(rules, { regions: "none" }, `{ ${given.map((cell) => `${nameOf(cell)}: ${filled[cell]}`).join(", ")} }`);

const areaOf = (filled: Filling, some: readonly number[]): string =>
  `{ cells: ${some.map(nameOf).join(" ")}, sum: ${some.reduce((all, cell) => all + filled[cell]!, 0)} }`;
const differ = (filled: Filling, some: readonly number[]): boolean =>
  new Set(some.map((cell) => filled[cell])).size === some.length;

/** Cells of which some don't see each other, so that they could repeat. */
const diagonals = ["0 5 10", "1 6 11", "0 6 9", "3 6 12", "2 5 15", "4 9 14", "1 4", "7 10", "8 13"].map((text) =>
  text.split(" ").map(Number),
);

const cage: Make = (random, filled) => {
  const given = random.shuffled(cells).slice(0, 3);
  const areas = random.shuffled(diagonals.filter((some) => differ(filled, some))).slice(0, 2);
  const rules = (kind: string): string[] => areas.map((some) => `${kind}: ${areaOf(filled, some)}`);
  return {
    text: puzzle(filled, given, rules("cage")),
    otherwise: () => fillingsOf(puzzle(filled, given, rules("sum-area"))),
  };
};

const sumArea: Make = (random, filled) => {
  const given = random.shuffled(cells).slice(0, 4);
  const some = random.pick(diagonals);
  const text = puzzle(filled, given, [`sum-area: ${areaOf(filled, some)}`]);
  return { text, otherwise: () => fillingsOf(text).filter((filling) => differ(filling, some)) };
};

const neighbours = cells.flatMap((cell) => [
  ...(cell % 4 < 3 ? [[cell, cell + 1] as const] : []),
  ...(cell < 12 ? [[cell, cell + 4] as const] : []),
]);
const dotOn = (filled: Filling, [a, b]: readonly [number, number]): string | undefined => {
  const [x, y] = [filled[a]!, filled[b]!];
  const where = `${nameOf(a)} ${nameOf(b)}`;
  if (Math.abs(x - y) === 1) return `kropke-white: ${where}`;
  return x === 2 * y || y === 2 * x ? `kropke-black: ${where}` : undefined;
};
const allDots = (filled: Filling): string[] => neighbours.flatMap((pair) => dotOn(filled, pair) ?? []);

const withRule: Make = (random, filled) => {
  const given = random.shuffled(cells).slice(0, random.below(3));
  const dots = allDots(filled);
  return {
    text: puzzle(filled, given, [...dots, "all-dots-shown"]),
    otherwise: () => fillingsOf(puzzle(filled, given, dots)),
  };
};

const withoutRule: Make = (random, filled) => {
  const given = random.shuffled(cells).slice(0, 4);
  const dots = random.below(2) === 0 ? allDots(filled) : random.shuffled(allDots(filled)).slice(0, 4);
  return {
    text: puzzle(filled, given, dots),
    otherwise: () => fillingsOf(puzzle(filled, given, [...dots, "all-dots-shown"])),
  };
};

const outcomeOf = (solution: Filling, otherwise: readonly Filling[]): Outcome => {
  if (otherwise.length > 1) return "needed";
  return otherwise[0]?.join() === solution.join() ? "no difference" : "must be said";
};

describe.each<{ reading: string; rule: string; make: Make; outcomes: readonly Outcome[] }>([
  { reading: "digits in a cage may repeat", rule: "cage", make: cage, outcomes: ["needed", "no difference"] },
  {
    reading: "digits in a sum area don't repeat",
    rule: "sum-area",
    make: sumArea,
    outcomes: ["must be said", "no difference"],
  },
  {
    reading: "missing dots mean nothing",
    rule: "all-dots-shown",
    make: withRule,
    outcomes: ["needed", "no difference"],
  },
  {
    reading: "all dots are shown",
    rule: "all-dots-shown",
    make: withoutRule,
    outcomes: ["must be said", "no difference"],
  },
])("$reading", ({ reading, rule, make, outcomes }) => {
  test("comes out as plain enumeration of the other rule finds", () => {
    const random = randomFrom(1);
    const seen = new Set<Outcome>();
    for (let run = 0; run < 50; run++) {
      const { text, otherwise } = make(random, random.pick(latin));
      const [solution, other] = fillingsOf(text);
      if (!solution || other) continue;
      const found = assumptionsIn(text, solution).find((each) => each.reading === reading);
      if (!found) continue;
      const others = otherwise();
      const expected = outcomeOf(solution, others);
      const verdict = ["none", "one"][others.length] ?? "several";
      expect(found, text).toEqual({ reading, rule, outcome: expected, verdict });
      seen.add(expected);
    }
    expect([...seen].sort()).toEqual(outcomes);
  });
});

test("a reading in which a rule can't be met is nobody's", () => {
  // Five cells on the digits 1 to 4 have to repeat one.
  const text = tiny(["parity-line: r1c1-r1c4 r2c4"], { regions: "none" }, "{ r1c1: 1 }");
  expect(assumptionsIn(text, fillingsOf(text)[0]!)).toEqual([]);
});

test("where a rule speaks of the missing marks in one grid, no other is guessed", () => {
  const text = tiny(
    ["kropke-white: [r1c1 r1c2, r1c1 r2c1, r1c2 r2c2, r2c1 r2c2]", "all-dots-shown: { grids: [a] }"],
    [
      { id: "a", size: 2 },
      { id: "b", size: 2, at: "r3c3" },
    ],
    "{ r1c1: 1, r3c3: 1 }",
  );
  expect(assumptionsIn(text, fillingsOf(text)[0]!)).toMatchObject([{ reading: "missing dots mean nothing" }]);
});

test("each mark has the rule about missing ones of its own sort", () => {
  const rules = ["consecutive-bar: r1c1 r1c2", "xv-v: r2c1 r2c2", "greater-than: r3c1 r3c2"];
  const text = tiny(rules);
  expect(assumptionsIn(text, fillingsOf(text)[0]!).map(({ rule }) => rule)).toEqual(["all-bars-shown", "all-xv-shown"]);
});
