import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { randomFrom } from "../../test-kit/random.ts";
import { compile } from "../board/compile.ts";
import { solve } from "../search/solve.ts";
import { canonicalName } from "./canonical.ts";
import type { Puzzle } from "./puzzle.ts";
import { mayTurn, relabelled, turned, turns } from "./turn.ts";

const example = (name: string): Puzzle =>
  puzzleOf(readFileSync(new URL(`../../../../examples/${name}.puzzle.yaml`, import.meta.url), "utf8"));
const small = (rest: string): Puzzle =>
  puzzleOf(`puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 4 }]\n${rest}`);
const solutionOf = (puzzle: Puzzle) => solve(compile(puzzle), { limit: 1 }).solutions[0]!;
const nameOf = (puzzle: Puzzle): string => canonicalName(puzzle, solutionOf(puzzle));

const examples = ["paper-mill", "harbour-lights", "market-stall", "rain-gauge"];

describe.each(examples)("%s", (name) => {
  const puzzle = example(name);
  test.each(turns.filter((turn) => mayTurn(puzzle, turn)).map((turn) => [turn.name, turn] as const))(
    "keeps its name: %s",
    (_, turn) => {
      expect(nameOf(turned(puzzle, turn))).toBe(nameOf(puzzle));
      expect(canonicalName(turned(puzzle, turn))).toBe(canonicalName(puzzle));
    },
  );
  test("keeps its name where its rules are listed from the last", () => {
    const rules = [...puzzle.rules].reverse();
    expect(nameOf({ ...puzzle, rules, title: "Other" })).toBe(nameOf(puzzle));
  });
});

test("no two examples share a name", () =>
  expect(new Set(examples.map((name) => nameOf(example(name)))).size).toBe(examples.length));

// One solution, by hand: 1234 3421 2143 4312.
const plain = small("givens:\n  main: |\n    12.4\n    34..\n    2...\n    ..1.\n");

test("digits renamed in every way, and turned as well", () => {
  const random = randomFrom(11);
  for (let k = 0; k < 50; k++) {
    const digits = random.shuffled([1, 2, 3, 4]);
    const renamed = relabelled(plain, (digit) => digits[digit - 1] ?? digit)!;
    expect(nameOf(turned(renamed, random.pick(turns)))).toBe(nameOf(plain));
  }
});

test("a cage whose cells are listed otherwise is the same, one with another sum is not", () => {
  const cage = (cells: string, sum: number) => nameOf(small(`rules: [{ cage: { cells: ${cells}, sum: ${sum} } }]\n`));
  expect(cage("r1c2 r1c1", 3)).toBe(cage("r1c1 r1c2", 3));
  expect(cage("r1c1 r1c2", 4)).not.toBe(cage("r1c1 r1c2", 3));
});

test("digits of a cage with a sum are not renamed", () => {
  const cage = (digit: number) =>
    canonicalName(small(`givens: { cells: { r4c4: ${digit} } }\nrules: [{ cage: { cells: r1c1 r1c2, sum: 3 } }]\n`));
  expect(cage(1)).not.toBe(cage(3));
});

test("a thermometer the other way round is told apart by the solution", () => {
  const up = [1, 2, 3, 4, 3, 4, 2, 1, 2, 1, 4, 3, 4, 3, 1, 2];
  const down = up.map((digit) => [0, 2, 1, 3, 4][digit]!);
  const name = (path: string, solution: number[]) =>
    canonicalName(small(`rules: [{ thermometer: ${path} }]\n`), solution);
  expect(name("r1c1 r1c2", up)).not.toBe(name("r1c2 r1c1", down));
});
