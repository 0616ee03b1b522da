import { across, asLine, atPoint } from "./along.ts";
import { sideOf } from "./parallel.ts";
import type { Point, Shape } from "./shape.ts";

const apart = 0.19;

const rail = (points: readonly Point[]): Shape => ({
  shape: "line",
  layer: "line",
  points,
  stroke: { ink: "clue-edge", width: 0.045, cap: "square" },
});

const railsAlong = (points: readonly Point[]): Shape[] => [
  ...[-apart / 2, apart / 2].map((aside) => rail(sideOf(points, aside))),
  ...[0, points.length - 1].map((k) => rail(across(atPoint(points, k), apart))),
];

/** Two rails, closed at both ends, and a number in the corner of the first cell, where a digit leaves room for it. */
export const rails = (points: readonly Point[], number: string): Shape[] => [
  ...railsAlong(asLine(points)),
  {
    shape: "text",
    layer: "cage",
    at: [points[0]![0] - 0.43, points[0]![1] - 0.2],
    text: number,
    size: 0.3,
    weight: 700,
    anchor: "start",
    plate: true,
    fill: "ink",
  },
];
