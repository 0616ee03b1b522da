import type { Point, Shape } from "./shape.ts";

interface Square {
  /** Canvas place of its top left cell, from 1. */
  readonly row: number;
  readonly column: number;
  readonly size: number;
}

/** A dashed line from corner to corner of the grid, a little inside it. */
export const dashedDiagonals = ({ row, column, size }: Square, which: "down" | "up"): Shape[] => {
  const inset = 0.06;
  const [left, right] = [column - 1 + inset, column - 1 + size - inset];
  const [top, bottom] = [row - 1 + inset, row - 1 + size - inset];
  const points: Point[] =
    which === "down"
      ? [
          [left, top],
          [right, bottom],
        ]
      : [
          [left, bottom],
          [right, top],
        ];
  return [{ shape: "line", layer: "line", points, stroke: { ink: "clue-edge", width: 0.04, dash: [0.13, 0.09] } }];
};
