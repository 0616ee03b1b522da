import { across, asLine, atPoint, halfway } from "./along.ts";
import { heavy, inked, pen } from "./pen.ts";
import type { Point, Shape } from "./shape.ts";

/** A line with two strokes across in the middle of these steps, each by the index of its first point. */
export const crossed = (points: readonly Point[], steps: readonly number[]): Shape[] => [
  inked(asLine(points), pen(0.1), heavy),
  ...steps.flatMap((k) =>
    [-0.07, 0.07].map((ahead) => inked(across(halfway(points[k]!, points[k + 1]!), 0.4, ahead), pen(0.045))),
  ),
];

/** Long enough to be seen on both sides of a digit. */
const threeStrokes = [
  [-0.09, 0.62],
  [0, 0.73],
  [0.09, 0.84],
] as const;

/** A line with three strokes across at each point, a short, a middling and a long one. */
export const withThreeStrokes = (points: readonly Point[]): Shape[] => [
  inked(points, pen(0.05), heavy),
  ...points.flatMap((_, k) =>
    threeStrokes.map(([ahead, length]) => inked(across(atPoint(points, k), length, ahead), pen(0.035))),
  ),
];
