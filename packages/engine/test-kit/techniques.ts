import { expect } from "vitest";
import type { Board } from "../src/board/board.ts";
import { compile } from "../src/board/compile.ts";
import { digitsOf, listOf } from "../src/board/digits.ts";
import { type Knowledge, startOf, withRemoved } from "../src/board/knowledge.ts";
import { claimOf } from "../src/deduce/claim.ts";
import { techniques } from "../src/deduce/registry.ts";
import { definitionOf } from "../src/prove/definition.ts";
import { prove } from "../src/prove/prove.ts";
import { cellNamed } from "../src/puzzle/canvas.ts";
import { puzzleOf } from "./puzzles.ts";

export const boardOf = (grids: string, rest = ""): Board =>
  compile(puzzleOf(`puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n${grids}${rest}`));

/** A board of one grid, `main`. */
export const one = (grid: string, rest = ""): Board => boardOf(`  - { id: main, ${grid} }\n`, rest);

/** The start without these digits in these cells. */
export const lacking = (board: Board, gone: Record<string, readonly number[]>): Knowledge =>
  withRemoved(
    startOf(board),
    Object.entries(gone).map(([name, digits]) => [cellNamed(board.canvas, name)!, digitsOf(digits)]),
  );

/** Everything that a technique finds; each must be proved as it stands, before its reasons are made small. */
export const foundBy = (name: string, board: Board, knowledge = startOf(board)) => {
  const technique = techniques.find((other) => other.name === name)!;
  return [...technique.find(knowledge, board)].map((deduction) => {
    const claim = claimOf(board, deduction);
    expect(prove(claim, definitionOf(board)), JSON.stringify(claim)).toEqual({ verdict: "proved" });
    const { places, removes } = deduction;
    return {
      places: Object.fromEntries([...places].map(([cell, digit]) => [board.canvas.names[cell]!, digit])),
      removes: Object.fromEntries([...removes].map(([cell, digits]) => [board.canvas.names[cell]!, listOf(digits)])),
    };
  });
};
