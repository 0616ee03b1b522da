import { evenly } from "./along.ts";
import { linksBetween } from "./links-between.ts";
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

const radiusAt = (k: number, count: number): number => 0.08 + (0.25 * k) / Math.max(1, count - 1);

/** Pale discs that grow by as much at every cell, so that a digit can stand on them, with a thin line from edge to edge. */
export const growingDiscs = (points: readonly Point[]): Shape[] => [
  ...linksBetween(points, (k) => radiusAt(k, points.length)).map((link) => inked(link, pen(0.045), heavy)),
  ...points.map(
    (at, k): Shape => ({
      shape: "disc",
      layer: "line",
      at,
      radius: radiusAt(k, points.length),
      fill: "clue",
      stroke: pen(0.03),
    }),
  ),
];
