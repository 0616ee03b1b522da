import { describe, expect, test } from "vitest";
import { allFillings } from "../../test-kit/all-fillings.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { randomFrom } from "../../test-kit/random.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import { finished } from "../finished.ts";
import type { Puzzle } from "../puzzle/puzzle.ts";
import type { Mend } from "./mend.ts";
import { mending } from "./mending.ts";

/** The puzzle as its file would be with the mend. */
const mended = (puzzle: Puzzle, { change, givens, rules }: Mend): Puzzle =>
  change === "add"
    ? { ...puzzle, givens: new Map([...puzzle.givens, ...givens]), rules: [...puzzle.rules, ...rules] }
    : {
        ...puzzle,
        givens: new Map([...puzzle.givens].filter(([cell]) => !givens.has(cell))),
        rules: puzzle.rules.filter((rule) => !rules.includes(rule)),
      };

const verdictOf = (puzzle: Puzzle): "none" | "one" | "several" =>
  (["none", "one"] as const)[allFillings(compile(puzzle)).length] ?? "several";
const sizeOf = ({ givens, rules }: Mend): number => givens.size + rules.length;

const mendsOf = (puzzle: Puzzle): readonly Mend[] => finished(mending(compile(puzzle), verdictOf(puzzle)));
const sentence = (puzzle: Puzzle, { givens, rules }: Mend): string =>
  [
    ...[...givens].map(([cell, digit]) => `${puzzle.canvas.names[cell]}: ${digit}`),
    ...rules.map(({ id, body }) => `${id} ${JSON.stringify((body as { cells?: unknown }).cells ?? "")}`),
  ].join(", ");

test("a sound puzzle needs none", () =>
  expect(
    mendsOf(puzzleOf(tiny(["even: r1c2"], {}, "{ r1c1: 1, r1c2: 2, r2c1: 3, r3c1: 2, r3c3: 4, r4c4: 1 }"))),
  ).toEqual([]));

const nameIn = (cell: number): string => `r${Math.floor(cell / 4) + 1}c${(cell % 4) + 1}`;
const square = "1234342121434312";
/** Every dot that a filled 4x4 has, each as a rule. */
const dotsOf = (digits: string): string[] =>
  [...digits].flatMap((_, cell) =>
    [...(cell % 4 < 3 ? [cell + 1] : []), ...(cell < 12 ? [cell + 4] : [])].flatMap((other) => {
      const [x, y] = [Number(digits[cell]), Number(digits[other])];
      const kind = Math.abs(x - y) === 1 ? "white" : Math.max(x, y) === 2 * Math.min(x, y) ? "black" : undefined;
      return kind ? [`kropke-${kind}: ${nameIn(cell)} ${nameIn(other)}`] : [];
    }),
  );

// 1 and 2 can change places in the two right columns, below a whole row (as in extent.test.ts).
const rectangle = "{ r1c1: 1, r1c2: 2, r1c3: 3, r1c4: 4, r2c1: 3, r2c2: 4, r3c3: 4, r3c4: 3, r4c1: 4, r4c2: 3 }";

describe("several solutions", () => {
  test("a given in any of the open cells", () => {
    const puzzle = puzzleOf(tiny(["even: r1c2"], {}, rectangle));
    expect(mendsOf(puzzle).map((mend) => sentence(puzzle, mend))).toEqual(["r2c3: 1", "r2c3: 2", "r2c4: 2"]);
  });

  test("or a mark of a sort that is there; not of another", () => {
    const puzzle = puzzleOf(tiny(["greater-than: r1c2 r1c1"], {}, rectangle));
    const kinds = new Set(mendsOf(puzzle).flatMap(({ rules }) => rules.map(({ kind }) => kind)));
    expect(kinds).toEqual(new Set(["greater-than"]));
  });

  test("or a rule about missing marks", () => {
    // All dots of a Latin square are there, but nothing says so.
    const puzzle = puzzleOf(tiny(dotsOf(square), { regions: "none" }));
    const rule = { id: "all-dots-shown/1", kind: "all-dots-shown", body: {} };
    const saying = mended(puzzle, { change: "add", givens: new Map(), rules: [rule], verdict: "one" });
    expect([verdictOf(puzzle), verdictOf(saying)]).toEqual(["several", "one"]);
    expect(mendsOf(puzzle).map(({ rules }) => rules)).toContainEqual([rule]);
  });

  test("marks come first where nothing is given", () => {
    // A000315: four Latin squares of order 4 have 1 2 3 4 as their first row and column.
    const lines = ["thermometer: r1c1-r1c4", "thermometer: r1c1-r4c1"];
    const puzzle = puzzleOf(tiny([...lines, "greater-than: r1c2 r1c1"], { regions: "none" }));
    expect(allFillings(compile(puzzle))).toHaveLength(4);
    expect(mendsOf(puzzle).map(({ rules }) => rules[0]?.kind)).toEqual(
      expect.arrayContaining(["greater-than", undefined]),
    );
    expect(mendsOf(puzzle)[0]!.rules).toHaveLength(1);
  });

  test("several together where no one is enough", () => {
    const puzzle = puzzleOf(tiny(["even: r1c2"], { regions: "none" }));
    const mends = mendsOf(puzzle);
    expect(mends.length).toBeGreaterThan(1);
    for (const mend of mends) {
      expect(verdictOf(mended(puzzle, mend))).toBe("one");
      // None of what it adds is spare.
      for (const [cell] of mend.givens) {
        const fewer = new Map([...mend.givens].filter(([other]) => other !== cell));
        expect(verdictOf(mended(puzzle, { ...mend, givens: fewer }))).toBe("several");
      }
    }
  });

  test("every mend of many puzzles leaves one solution, one that it had", () => {
    const random = randomFrom(3);
    const all = allFillings(compile(puzzleOf(tiny(["even: r1c2"]))));
    for (let run = 0; run < 25; run++) {
      const filled = random.pick(all);
      const given = random.shuffled([...filled.keys()]).slice(0, 3 + random.below(3));
      const names = given.map((cell) => `r${Math.floor(cell / 4) + 1}c${(cell % 4) + 1}: ${filled[cell]}`);
      const puzzle = puzzleOf(tiny(["greater-than: r1c1 r1c2", "even: r2c2"], {}, `{ ${names.join(", ")} }`));
      const before = new Set(allFillings(compile(puzzle)).map((filling) => filling.join()));
      if (before.size < 2) continue;
      for (const mend of mendsOf(puzzle)) {
        const after = allFillings(compile(mended(puzzle, mend)));
        expect(after, sentence(puzzle, mend)).toHaveLength(1);
        expect(before.has(after[0]!.join())).toBe(true);
      }
    }
  });
});

describe("no solution", () => {
  /** The least number of rules and givens without which there is a solution, every choice tried. */
  const leastRemoved = (puzzle: Puzzle): number => {
    const items = [...puzzle.givens.keys(), ...puzzle.rules];
    const without = (some: readonly unknown[]): Puzzle => ({
      ...puzzle,
      givens: new Map([...puzzle.givens].filter(([cell]) => !some.includes(cell))),
      rules: puzzle.rules.filter((rule) => !some.includes(rule)),
    });
    for (const size of [1, 2, 3])
      for (let set = 0; set < 2 ** items.length; set++) {
        const some = items.filter((_, k) => (set >> k) & 1);
        if (some.length === size && verdictOf(without(some)) !== "none") return size;
      }
    throw new Error("more than three would have to go");
  };

  test.each([
    // The cage of 3 is 1 and 2, and the row has its 1.
    ["cage: { cells: r1c2 r1c3, sum: 3 }", "{ r1c1: 1, r3c2: 4 }"],
    ["thermometer: [r1c1-r1c4, r2c4-r2c1, r3c1-r3c4]", "{ r4c4: 4 }"],
    ["palindrome: [r1c1-r1c2, r3c1-r3c2]", "{ r2c2: 1 }"],
    ["even: [r1c1 r1c2 r1c3, r2c1 r2c2]", "{ r4c4: 1 }"],
    ["greater-than: [r1c2 r1c1, r2c2 r1c2, r1c1 r2c1, r2c1 r2c2]", "{ r4c4: 1 }"],
  ])("%s with %s: the fewest are taken away", (rule, givens) => {
    const puzzle = puzzleOf(tiny([rule], {}, givens));
    expect(verdictOf(puzzle)).toBe("none");
    const mends = mendsOf(puzzle);
    expect(mends.length).toBeGreaterThan(0);
    for (const mend of mends) {
      expect(mend.change).toBe("remove");
      expect(sizeOf(mend)).toBe(leastRemoved(puzzle));
      expect(verdictOf(mended(puzzle, mend)), sentence(puzzle, mend)).toBe(mend.verdict);
    }
  });

  test("a dot is not taken away where it would then be missing", () => {
    // The given 2 and 3 want a white dot. Without the black one all-dots-shown would still not have them side by side.
    const [x, y] = [square.indexOf("2"), square.indexOf("2") + 1];
    expect(square[y]).toBe("3");
    const wrong = dotsOf(square).map((dot) =>
      dot === `kropke-white: ${nameIn(x)} ${nameIn(y)}` ? dot.replace("white", "black") : dot,
    );
    const givens = `{ ${nameIn(x)}: 2, ${nameIn(y)}: 3 }`;
    const puzzle = puzzleOf(tiny([...wrong, "all-dots-shown"], { regions: "none" }, givens));
    expect(verdictOf(puzzle)).toBe("none");
    const mends = mendsOf(puzzle);
    expect(mends.length).toBeGreaterThan(0);
    for (const mend of mends) expect(verdictOf(mended(puzzle, mend)), sentence(puzzle, mend)).toBe(mend.verdict);
  });

  test("houses that can't be filled have nothing to take away", () => {
    const grids = [
      { id: "a", size: 3, digits: "1-3", regions: "none" },
      { id: "b", size: 3, digits: "3-5", at: "r1c2", regions: "none" },
    ];
    const puzzle = puzzleOf(tiny(["even: r1c4"], grids));
    expect(verdictOf(puzzle)).toBe("none");
    expect(mendsOf(puzzle)).toEqual([]);
  });
});

test("stopped between two, it has told what it knew", () => {
  const puzzle = puzzleOf(tiny(["even: r1c2"], {}, rectangle));
  const work = mending(compile(puzzle), "several");
  const known: number[] = [];
  for (let step = work.next(); !step.done; step = work.next()) known.push(step.value.known.length);
  expect(known).toEqual([0, 1, 2]);
});
