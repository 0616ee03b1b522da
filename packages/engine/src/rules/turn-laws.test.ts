import { describe, expect, test } from "vitest";
import { cases } from "../../test-kit/kind-files.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import type { Puzzle } from "../puzzle/puzzle.ts";
import { cellsTurned, inverse, mayTurn, relabelled, turned, turningOf, turns } from "../puzzle/turn.ts";
import { write } from "../puzzle/write.ts";
import { solve } from "../search/solve.ts";
import { kinds } from "./registry.ts";

const most = 40;

/** Solutions as texts, one a filling, in alphabetical order; undefined where there are more than are looked at. */
const solutionsOf = (puzzle: Puzzle, at: (cell: number) => number = (cell) => cell): string[] | undefined => {
  const { solutions, exhausted } = solve(compile(puzzle), { limit: most });
  if (!exhausted) return undefined;
  return solutions
    .map((solution) => {
      const moved: number[] = [];
      for (const [cell, digit] of solution.entries()) moved[at(cell)] = digit;
      return moved.join(" ");
    })
    .sort();
};

describe.each(kinds.filter(({ name }) => cases.has(name)))("$name", ({ name }) => {
  const puzzles = cases.get(name)!.boards.map((text) => puzzleOf(text));

  test("writing and reading gives the same back", () => {
    for (const puzzle of puzzles) expect(puzzleOf(write(puzzle))).toEqual(puzzle);
  });

  test("turning and solving may change places", () => {
    for (const puzzle of puzzles)
      for (const turn of turns.filter((turn) => mayTurn(puzzle, turn))) {
        const other = turned(puzzle, turn);
        const cells = cellsTurned(puzzle.canvas, other.canvas, turningOf(turn, puzzle.grids));
        expect(solutionsOf(other), `${turn.name}\n${write(puzzle)}`).toEqual(
          solutionsOf(puzzle, (cell) => cells[cell]!),
        );
        expect(write(turned(other, inverse(turn)))).toBe(write(puzzle));
      }
  });

  test("renaming digits, where it may, and solving may change places", () => {
    for (const puzzle of puzzles) {
      const digits = puzzle.grids[0]!.digits;
      const mirror = (digit: number): number => digits[0]! + digits.at(-1)! - digit;
      const other = relabelled(puzzle, mirror);
      if (!other) continue;
      const renamed = solutionsOf(puzzle)?.map((text) =>
        text
          .split(" ")
          .map((digit) => mirror(Number(digit)))
          .join(" "),
      );
      expect(solutionsOf(other), write(puzzle)).toEqual(renamed?.sort());
    }
  });
});
