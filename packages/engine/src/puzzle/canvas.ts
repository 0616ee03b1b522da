import { remembered } from "../board/remembered.ts";

/** A cell by its place in the reading order of the canvas, from 0. Only cells that lie in a grid have one. */
export type Cell = number;

/** A place on the canvas: row and column count from 1 at the top left of the whole canvas. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** All cells of a puzzle, whatever grids they lie in. */
export interface Canvas {
  readonly rows: number;
  readonly columns: number;
  /** By `Cell`. */
  readonly places: readonly Place[];
  /** By `Cell`: the file names, r1c1 and so on. */
  readonly names: readonly string[];
  /** By `Cell`: the indices of the grids that it lies in, in file order. */
  readonly grids: readonly (readonly number[])[];
}

export const nameOf = ({ row, column }: Place): string => `r${row}c${column}`;

/** The place that `r3c4` names, or undefined where the text is no cell's name. */
export const placeOf = (name: string): Place | undefined => {
  const match = /^r([1-9]\d{0,3})c([1-9]\d{0,3})$/.exec(name);
  return match ? { row: Number(match[1]), column: Number(match[2]) } : undefined;
};

interface Sheet extends Place {
  readonly size: number;
}

const covers = (sheet: Sheet, row: number, column: number): boolean =>
  row >= sheet.row && row < sheet.row + sheet.size && column >= sheet.column && column < sheet.column + sheet.size;

/** The canvas under these grids. */
export const canvasOf = (sheets: readonly Sheet[]): Canvas => {
  const rows = Math.max(0, ...sheets.map(({ row, size }) => row + size - 1));
  const columns = Math.max(0, ...sheets.map(({ column, size }) => column + size - 1));
  const places: Place[] = [];
  const grids: number[][] = [];
  for (let row = 1; row <= rows; row++)
    for (let column = 1; column <= columns; column++) {
      const under = sheets.flatMap((sheet, index) => (covers(sheet, row, column) ? [index] : []));
      if (under.length === 0) continue;
      places.push({ row, column });
      grids.push(under);
    }
  return { rows, columns, places, names: places.map(nameOf), grids };
};

/** By row and column, as many a row as the canvas has columns and one more: the cell there, or -1. */
const indexOf = remembered(({ rows, columns, places }: Canvas): Int32Array => {
  const cells = new Int32Array((rows + 1) * (columns + 1)).fill(-1);
  for (const [cell, { row, column }] of places.entries()) cells[row * (columns + 1) + column] = cell;
  return cells;
});

export const cellAt = (canvas: Canvas, { row, column }: Place): Cell | undefined => {
  if (row < 1 || row > canvas.rows || column < 1 || column > canvas.columns) return undefined;
  const cell = indexOf(canvas)[row * (canvas.columns + 1) + column]!;
  return cell < 0 ? undefined : cell;
};
export const cellNamed = (canvas: Canvas, name: string): Cell | undefined => {
  const place = placeOf(name);
  return place && cellAt(canvas, place);
};

const around = (canvas: Canvas, cell: Cell, steps: readonly (readonly [number, number])[]): Cell[] => {
  const { row, column } = canvas.places[cell]!;
  return steps.flatMap(([down, right]) => cellAt(canvas, { row: row + down, column: column + right }) ?? []);
};

const sides = [
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, 0],
] as const;

/** The cells that share a side with this one, whatever grid they lie in, in reading order. */
export const neighboursOf = (canvas: Canvas, cell: Cell): Cell[] => around(canvas, cell, sides);

/** Every two cells of the canvas that are one of these steps apart, each pair once, the earlier cell first. */
export const pairsApart = (canvas: Canvas, steps: readonly (readonly [number, number])[]): [Cell, Cell][] =>
  canvas.places.flatMap((_, cell) =>
    around(canvas, cell, steps).flatMap((other): [Cell, Cell][] => (cell < other ? [[cell, other]] : [])),
  );
