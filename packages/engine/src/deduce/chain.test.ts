import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { chained } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { samples } from "../../test-kit/samples.ts";
import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { both } from "../board/digits.ts";
import { at, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { needless } from "../prove/small.ts";
import type { Solution } from "../search/run.ts";
import { solve } from "../search/solve.ts";
import { after } from "./after.ts";
import { claimOf } from "./claim.ts";
import type { Deduction } from "./deduction.ts";
import { techniques } from "./registry.ts";

const here = fileURLToPath(new URL(".", import.meta.url));
const examples = `${here}../../../../examples/`;
const files = [
  ...samples,
  ...readdirSync(examples)
    .filter((name) => name.endsWith(".puzzle.yaml"))
    .map((name) => ({ name, text: readFileSync(`${examples}${name}`, "utf8") })),
];

const onlySolution = (board: Board): Solution => {
  const { solutions } = solve(board, { limit: 2 });
  expect(solutions).toHaveLength(1);
  return solutions[0]!;
};

/** Whether no digit of this filling is denied: the judge is the search, which shares nothing with the reasoning. */
const isTrueOf = ({ places, removes }: Deduction, solution: Solution): boolean =>
  [...places].every(([cell, digit]) => solution[cell] === digit) &&
  [...removes].every(([cell, digits]) => ((digits >>> solution[cell]!) & 1) === 0);

const statesAlong = (board: Board, steps: readonly Deduction[]): Knowledge[] => {
  const states = [startOf(board)];
  for (const step of steps) states.push(after(states.at(-1)!, board, step));
  return states;
};

describe.each(files)("$name", ({ text }) => {
  const board = compile(puzzleOf(text));
  const about = definitionOf(board);
  const { bursts, solved, judge } = chained(board);
  const steps = bursts.flat();
  const states = statesAlong(board, steps);

  test("is solved without a false, needless or repeated step", () => {
    const solution = onlySolution(board);
    expect(solved).toBe(true);
    expect(judge.refusals).toEqual([]);
    for (const [k, step] of steps.entries()) {
      expect(isTrueOf(step, solution)).toBe(true);
      const open = [...step.places.keys()].some((cell) => !isSettled(states[k]!, cell));
      const gone = [...step.removes].some(([cell, digits]) => both(at(states[k]!, cell), digits) !== 0);
      expect(open || gone).toBe(true);
    }
  });
  test("every step is proved and leans on nothing that it stands without", () => {
    for (const step of steps) {
      const claim = claimOf(board, step);
      expect(prove(claim, about), JSON.stringify(claim)).toEqual({ verdict: "proved" });
      expect(needless(claim, about), JSON.stringify(claim)).toEqual([]);
    }
  });
  test("each burst ends with a digit, and only the last of a burst settles one", () => {
    for (const burst of bursts)
      expect(burst.map(({ places }) => places.size)).toEqual([...burst.slice(1).map(() => 0), 1]);
  });
  test("whatever any technique finds on the way is true and is proved as it stands, before it is made small", () => {
    const solution = onlySolution(board);
    const seen = new Set<string>();
    for (const state of states)
      for (const technique of techniques)
        for (const deduction of technique.find(state, board)) {
          const claim = claimOf(board, deduction);
          const key = JSON.stringify(claim);
          if (seen.has(key)) continue;
          seen.add(key);
          expect(isTrueOf(deduction, solution), `${technique.name} ${key}`).toBe(true);
          expect(prove(claim, about), `${technique.name} ${key}`).toEqual({ verdict: "proved" });
        }
    expect(seen.size).toBeGreaterThan(steps.length);
  });
});

const classic = (line: string): Board =>
  compile(
    puzzleOf(
      `puzzle: 1\ntitle: Classic\nsetter: { name: unknown, permission: unknown }\ngrids:\n  - { id: main, size: 9 }\ngivens:\n  main: "${line}"\n`,
    ),
  );

/** The lines of P. Norvig's "hardest" list (pytudes, MIT): the givens, a blank, the solution. */
const hardest = readFileSync(`${here}../../../../checks/norvig-hardest.txt`, "utf8")
  .split("\n")
  .filter((line) => /^[.\d]{81} /.test(line))
  .map((line) => line.split(" ") as [string, string]);

const filled = (board: Board, steps: readonly Deduction[]): string => {
  const digits = new Map([...board.givens, ...steps.flatMap(({ places }) => [...places])]);
  return board.domains.map((_, cell) => digits.get(cell) ?? ".").join("");
};

test.each([
  [3, "by patterns alone"],
  [11, "what-ifs and all"],
])("line %i of the hardest is solved whole, %s, as its source says", (line, how) => {
  const [givens, solution] = hardest[line - 1]!;
  const board = classic(givens);
  const { bursts, solved, judge } = chained(board);
  const steps = bursts.flat();
  expect({ solved, refusals: judge.refusals }).toEqual({ solved: true, refusals: [] });
  expect(filled(board, steps)).toBe(solution);
  expect(steps.some(({ assume }) => assume)).toBe(how === "what-ifs and all");
});

describe("where the wanted level ends", () => {
  const board = classic(hardest[2]![0]);
  const levelOf = (steps: readonly Deduction[]): number => Math.max(0, ...steps.map(({ level }) => level));

  test.each([1, 2, 3])("level %i is not passed, and what was found is a true beginning", (level) => {
    const { bursts, solved, judge } = chained(board, { level });
    const steps = bursts.flat();
    expect(solved).toBe(false);
    expect(levelOf(steps)).toBeLessThanOrEqual(level);
    expect(steps.every((step) => isTrueOf(step, onlySolution(board)))).toBe(true);
    expect(judge.refusals).toEqual([]);
  });
  test("the cap changes nothing where the puzzle does not reach it", () => {
    const easy = compile(puzzleOf(samples.find(({ name }) => name === "Crooked Lanes")!.text));
    expect(chained(easy, { level: 1 })).toMatchObject({ solved: true, bursts: chained(easy).bursts });
  });
});

describe("boards without exactly one solution", () => {
  const sheds = samples.find(({ name }) => name === "Two Sheds")!.text;

  test("several solutions: it ends unsolved, and every step is true of all of them", () => {
    const board = compile(puzzleOf(sheds.replace("r8c7: 6 ", "").replace(", }", " }")));
    const { solutions, exhausted } = solve(board, { limit: 500 });
    expect(exhausted && solutions.length > 1).toBe(true);
    const { bursts, solved } = chained(board);
    expect(solved).toBe(false);
    expect(bursts.length).toBeGreaterThan(0);
    for (const step of bursts.flat()) for (const solution of solutions) expect(isTrueOf(step, solution)).toBe(true);
  });
  const impossible = (): Board => compile(puzzleOf(sheds.replace("sum: 11", "sum: 10")));
  test("no solution: it ends, and nothing is thrown", () => {
    const board = impossible();
    expect(solve(board, { limit: 1 }).solutions).toEqual([]);
    expect(chained(board).judge.refusals).toEqual([]);
  });
  // A clue of which no step speaks: the grid gets filled without it.
  test("no solution: a filled grid that breaks a clue is not called solved", () =>
    expect(chained(impossible()).solved).toBe(false));
});

describe("nothing peeks", () => {
  const sources = (folder: string): string[] =>
    readdirSync(`${here}../${folder}`, { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
      .map((name) => `${here}../${folder}/${name}`);
  /** What is only a type is gone when the program runs. */
  const withoutTypes = (text: string): string => text.replace(/^import type [^;]*;$/gm, "");
  const importsOf = (file: string): string[] =>
    [...withoutTypes(readFileSync(file, "utf8")).matchAll(/(?:from|import)\s*\(?\s*"(\.[^"]+)"/g)].map(([, path]) =>
      fileURLToPath(new URL(path!, `file://${file}`)),
    );
  /** Every module that these files reach, by whatever way round. */
  const reached = (files: readonly string[]): Set<string> => {
    const seen = new Set<string>();
    const waiting = [...files];
    for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
      if (seen.has(file)) continue;
      seen.add(file);
      waiting.push(...importsOf(file));
    }
    return seen;
  };

  test.each(["deduce", "order", "speech"])(
    "no module of %s reaches the search, directly or through others",
    (folder) => {
      const files = reached(sources(folder));
      expect(files.size).toBeGreaterThan(20);
      expect([...files].filter((file) => file.includes("/src/search/"))).toEqual([]);
    },
  );
  test("such a walk does see the search where it is imported", () =>
    expect([...reached([`${here}../index.ts`])].some((file) => file.endsWith("/src/search/solve.ts"))).toBe(true));
});
