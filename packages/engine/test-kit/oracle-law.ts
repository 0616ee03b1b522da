import { describe, expect, test } from "vitest";
import { compile } from "../src/board/compile.ts";
import type { Puzzle } from "../src/puzzle/puzzle.ts";
import type { Kind } from "../src/rules/contract.ts";
import { possibilities } from "../src/search/possibilities.ts";
import { solve } from "../src/search/solve.ts";
import { soundness } from "../src/search/soundness.ts";
import { oracleOf, type Seen } from "./clingo.ts";
import type { KindCases } from "./kind-cases.ts";
import { cases } from "./kind-files.ts";
import { puzzleOf } from "./puzzles.ts";
import { randomBoards } from "./random-boards.ts";

/** Solutions are compared one by one up to so many. */
const bound = 700;
const seed = 20260101;
/** No two alike: 6 without a solution, 7 with one and 7 with several. */
const boardsOfAKind = 20;

const verdictOf = (count: number): string => (count === 0 ? "none" : count === 1 ? "one" : "several");

/** What the search finds, in the oracle's form. */
const found = (puzzle: Puzzle): Seen => {
  const board = compile(puzzle);
  const { solutions, exhausted } = solve(board, { limit: bound + 1 });
  const count = Math.min(bound, solutions.length);
  const list = solutions.map((solution) => solution.join()).sort();
  expect(soundness(board).verdict).toBe(verdictOf(count));
  return { count, exact: exhausted && solutions.length <= bound, solutions: list, possible: possibilities(board) };
};

const agree = (puzzle: Puzzle, seen: Seen, text: string): void => {
  const own = found(puzzle);
  const listed = seen.exact ? own : { ...own, solutions: seen.solutions };
  expect(listed, text).toEqual(seen);
};

/** The example with all cells given: the filling that obeys, and the one that breaks this rule alone. */
const filledWith = ({ example: { puzzle: text } }: KindCases, filling: string): Puzzle => {
  const puzzle = puzzleOf(text);
  const digits = filling
    .split("\n")
    .flatMap((line) => (/\s/.test(line.trim()) ? line.trim().split(/\s+/) : [...line.trim()]));
  return { ...puzzle, givens: new Map(digits.map((digit, cell) => [cell, Number(digit)])) };
};

/** Holds the search to the outside oracle: the kind's own boards, its example, and boards drawn at random. */
export const holdToOracle = (kinds: readonly Kind[]): void => {
  describe.each(kinds.filter(({ name }) => cases.has(name)))("$name", (kind) => {
    const own = cases.get(kind.name)!;

    test("its own boards", async () => {
      const puzzles = own.boards.map((text) => puzzleOf(text));
      for (const [k, seen] of (await oracleOf(puzzles, bound)).entries()) agree(puzzles[k]!, seen, own.boards[k]!);
    });

    test("the example obeys, and what breaks it breaks this rule alone", async () => {
      const broken = filledWith(own, own.example.breaks);
      const others = { ...broken, rules: broken.rules.filter((rule) => rule.kind !== kind.name) };
      const seen = await oracleOf([filledWith(own, own.example.obeys), broken, others], 2);
      expect(seen.map(({ count }) => count)).toEqual([1, 0, 1]);
    });

    test("boards drawn at random", async () => {
      const boards = randomBoards(kind, own, boardsOfAKind, seed);
      expect(boards.filter(({ puzzle }) => puzzle.rules.some((rule) => rule.kind === kind.name))).toHaveLength(
        boardsOfAKind,
      );
      const verdicts: string[] = [];
      for (const [k, seen] of (
        await oracleOf(
          boards.map(({ puzzle }) => puzzle),
          bound,
        )
      ).entries()) {
        agree(boards[k]!.puzzle, seen, boards[k]!.text);
        verdicts.push(verdictOf(seen.count));
      }
      const times = (verdict: string) => verdicts.filter((other) => other === verdict).length;
      expect({ none: times("none"), one: times("one"), several: times("several") }).toEqual({
        none: 6,
        one: 7,
        several: 7,
      });
    });
  });
};
