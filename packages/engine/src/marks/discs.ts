import { evenly } from "./along.ts";
import { heavy, inked, pen } from "./pen.ts";
import type { Point, Shape } from "./shape.ts";

const disc = (at: Point, radius: number): Shape => ({
  shape: "disc",
  layer: "line",
  at,
  radius,
  fill: "clue-ink",
  opacity: 0.9,
});

/** Small dots every .25, joined by nothing. */
export const looseDots = (points: readonly Point[]): Shape[] => evenly(points, 0.25).map(({ at }) => disc(at, 0.065));

/** Discs on a thin line that grow by as much at every cell. */
export const growingDiscs = (points: readonly Point[]): Shape[] => [
  inked(points, pen(0.045), heavy),
  ...points.map((at, k) => disc(at, 0.07 + (0.16 * k) / Math.max(1, points.length - 1))),
];
