import { expect, test } from "vitest";
import { compile } from "../packages/engine/src/board/compile.ts";
import { solve } from "../packages/engine/src/search/solve.ts";
import { puzzleOf } from "../packages/engine/test-kit/puzzles.ts";

const head = "puzzle: 1\ntitle: Counted\nsetter: { name: Nobody, permission: own }\n";
const boardOf = (grid: string, rules: readonly string[] = [], givens = "{}") =>
  compile(
    puzzleOf(
      `${head}grids: [{ id: main, ${grid} }]\ngivens: { cells: ${givens} }\nrules: [${rules.map((rule) => ` ${rule}`)}]\n`,
    ),
  );

/** 1 to so many across the first row, and down the first column where wanted. */
const inOrder = (size: number, isDownToo = false): string => {
  const across = Array.from({ length: size }, (_, k) => `r1c${k + 1}: ${k + 1}`);
  const down = Array.from({ length: size - 1 }, (_, k) => `r${k + 2}c1: ${k + 2}`);
  return `{ ${[...across, ...(isDownToo ? down : [])].join(", ")} }`;
};
const countOf = (board: ReturnType<typeof boardOf>): number => {
  const { solutions, exhausted } = solve(board, { limit: 50_000 });
  expect(exhausted).toBe(true);
  return solutions.length;
};
const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

// Digits may be renamed, so each row of a grid can be made 1, 2, 3, ... in as many ways as there are orders.
// /work/shared/checks/PUBLISHED.md: a secondary text, and counted for this project.
test("28,200,960 filled grids of six with boxes of 2 rows and 3 columns", () =>
  expect(countOf(boardOf("size: 6", [], inOrder(6))) * factorial(6)).toBe(28_200_960));

// OEIS A002860: rows and digits may be put in order.
test("812,851,200 Latin squares of order 6", () =>
  expect(countOf(boardOf("size: 6, regions: none", [], inOrder(6, true))) * factorial(6) * factorial(5)).toBe(
    812_851_200,
  ));

// Counted for this project by one method.
test("1,451,520 grids of nine without a repeat a king's or a knight's move away", () =>
  expect(countOf(boardOf("size: 9", ["anti-king", "anti-knight"], inOrder(9))) * factorial(9)).toBe(1_451_520));

// Counted for this project by two methods.
test("72 of them have no consecutive neighbours", () =>
  expect(countOf(boardOf("size: 9", ["anti-king", "anti-knight", "non-consecutive"]))).toBe(72));

// NetworkX documentation, sudoku_graph.
test.each([
  ["size: 9", 81, 810, 20],
  ["size: 4", 16, 56, 7],
])("cells that may not be equal, %s", (grid, nodes, edges, degree) => {
  const { sees } = boardOf(grid);
  expect([sees.length, sees.flat().length / 2, ...new Set(sees.map((others) => others.length))]).toEqual([
    nodes,
    edges,
    degree,
  ]);
});
