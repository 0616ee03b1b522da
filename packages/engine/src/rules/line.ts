import { centres } from "../marks/points.ts";
import type { Point } from "../marks/shape.ts";
import type { Cell, Place } from "../puzzle/canvas.ts";
import { cellsAt } from "./cells.ts";
import type { Bound, Setting } from "./contract.ts";

/** Cells in the order of a line. */
export interface Line extends Bound {
  /** The middles of the cells. */
  readonly points: readonly Point[];
}

export const lineOf = (places: readonly Place[], setting: Setting): Line => ({
  cells: cellsAt(setting, places),
  points: centres(places),
});

/** Every `size` in a row. */
export const windowsOf = <T>(list: readonly T[], size: number): T[][] =>
  list.slice(size - 1).map((_, k) => list.slice(k, k + size));

/** Every two in a row. */
export const stepsOf = <T>(list: readonly T[]): (readonly [T, T])[] =>
  list.slice(1).map((item, k) => [list[k]!, item] as const);

/** Every two, in whatever distance. */
export const pairsOf = <T>(list: readonly T[]): (readonly [T, T])[] =>
  list.flatMap((item, k) => list.slice(k + 1).map((other) => [item, other] as const));

/** Every two where there are few, else every two in a row: of what is all alike, either says it, and the first says more. */
export const tiesOf = <T>(list: readonly T[]): (readonly [T, T])[] =>
  list.length > 12 ? stepsOf(list) : pairsOf(list);

/** Every two equally far from the middle, the ends first. */
export const mirrored = <T>(list: readonly T[]): (readonly [T, T])[] =>
  list.slice(0, Math.floor(list.length / 2)).map((item, k) => [item, list.at(-1 - k)!] as const);

export const endsOf = (cells: readonly Cell[]): readonly [Cell, Cell] => [cells[0]!, cells.at(-1)!];
/** What lies between the ends. */
export const innerOf = <T>(list: readonly T[]): T[] => list.slice(1, -1);
