import { type Board, capital, cellNamed } from "@solvewright/engine";
import { element, escaped } from "../../svg/element.ts";

const cellAt = (board: Board, grid: number, row: number, column: number): string => {
  const sheet = board.puzzle.grids[grid]!;
  return `r${sheet.row + row}c${sheet.column + column}`;
};

const counting = (size: number): readonly number[] => Array.from({ length: size }, (_, k) => k);

/** Every grid as a table with its rows and columns numbered: a digit, or the word "blank", in each cell. */
export const typedGrids = (board: Board, settled: Readonly<Record<string, number>>, when: string): string => {
  const digitIn = (name: string): number | undefined =>
    settled[name] ?? board.puzzle.givens.get(cellNamed(board.canvas, name)!);
  const cell = (grid: number, row: number, column: number): string => {
    const digit = digitIn(cellAt(board, grid, row, column));
    return digit === undefined ? '<td><span class="blank">blank</span></td>' : `<td>${digit}</td>`;
  };
  const tables = board.puzzle.grids.map(({ called, size }, grid) => {
    const head = counting(size).map((column) => `<th scope="col">${column + 1}</th>`);
    const rows = counting(size).map((row) => {
      const cells = counting(size).map((column) => cell(grid, row, column));
      return `<tr><th scope="row">${row + 1}</th>${cells.join("")}</tr>`;
    });
    const caption = element("caption", {}, `${escaped(capital(called))} ${escaped(when)}`);
    return `<table class="grid">${caption}<thead><tr><td></td>${head.join("")}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
  });
  return `<div class="grids">${tables.join("\n")}</div>`;
};
