import type { Place } from "../puzzle/canvas.ts";
import type { Point } from "./shape.ts";

/** The middle of a cell. */
export const centre = ({ row, column }: Place): Point => [column - 0.5, row - 0.5];
export const centres = (places: readonly Place[]): Point[] => places.map(centre);
export const between = ([ax, ay]: Point, [bx, by]: Point, share = 0.5): Point => [
  ax + (bx - ax) * share,
  ay + (by - ay) * share,
];
export const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);
/** The point `length` from a on the way to b. */
export const towards = (a: Point, b: Point, length: number): Point => between(a, b, length / distance(a, b));
