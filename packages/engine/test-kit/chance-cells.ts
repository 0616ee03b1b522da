import type { Filled } from "./kind-cases.ts";
import type { Random } from "./random.ts";

/** A cell of a filled board with its name in the file. */
export interface FilledCell {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly digit: number;
}

export const cellsOf = (board: Filled): FilledCell[] =>
  Array.from({ length: board.size ** 2 }, (_, k) => {
    const [row, column] = [Math.floor(k / board.size) + 1, (k % board.size) + 1];
    return { name: `r${row}c${column}`, row, column, digit: board.digit(row, column) };
  });

const areBeside = (a: FilledCell, b: FilledCell): boolean =>
  Math.abs(a.row - b.row) + Math.abs(a.column - b.column) === 1;

export const besides = (cell: FilledCell, board: Filled): FilledCell[] =>
  cellsOf(board).filter((other) => areBeside(cell, other));

/** The cells as a path in the file. */
export const pathOf = (cells: readonly FilledCell[]): string => cells.map(({ name }) => name).join(" ");

/** Cells that hang together by their sides, grown from one, as many as fit up to `most`. */
export const areaIn = (
  random: Random,
  board: Filled,
  most: number,
  fits: (cell: FilledCell, area: readonly FilledCell[]) => boolean = () => true,
): FilledCell[] => {
  const all = random.shuffled(cellsOf(board));
  const area: FilledCell[] = [];
  while (area.length < most) {
    const next = random
      .shuffled(all)
      .find(
        (cell) =>
          !area.includes(cell) && (area.length === 0 || area.some((own) => areBeside(own, cell))) && fits(cell, area),
      );
    if (!next) break;
    area.push(next);
  }
  return area;
};

/** Keeps an area free of repeats. */
export const isNew = (cell: FilledCell, area: readonly FilledCell[]): boolean =>
  area.every(({ digit }) => digit !== cell.digit);

/** The first of `tries` attempts that comes to something. */
export const attempt = <T>(tries: number, make: () => T | undefined): T | undefined => {
  for (let k = 0; k < tries; k++) {
    const made = make();
    if (made !== undefined) return made;
  }
  return undefined;
};
