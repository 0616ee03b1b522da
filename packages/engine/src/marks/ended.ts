import { heavy, inked, pen } from "./pen.ts";
import { towards } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

const edge = pen(0.045);
const circle = (at: Point): Shape => ({ shape: "disc", layer: "line", at, radius: 0.3, stroke: edge });
const diamond = ([x, y]: Point): Shape => ({
  shape: "line",
  layer: "line",
  points: [
    [x, y - 0.36],
    [x + 0.36, y],
    [x, y + 0.36],
    [x - 0.36, y],
  ],
  closed: true,
  stroke: edge,
});

const isDiagonal = ([ax, ay]: Point, [bx, by]: Point): boolean => ax !== bx && ay !== by;
/** From the middle to the corner of the diamond, or to the middle of its side. */
const diamondReach = (at: Point, next: Point): number => (isDiagonal(at, next) ? 0.36 / Math.SQRT2 : 0.36);

/** A line from edge to edge of what stands at its two ends. */
const ended = (
  points: readonly Point[],
  end: (at: Point) => Shape,
  reach: (at: Point, next: Point) => number,
): Shape[] => {
  const [first, last] = [points[0]!, points.at(-1)!];
  const [second, before] = [points[1]!, points.at(-2)!];
  const from = towards(first, second, reach(first, second));
  const to = towards(last, before, reach(last, before));
  return [inked([from, ...points.slice(1, -1), to], pen(0.08), heavy), end(first), end(last)];
};

/** A line between two open circles. */
export const betweenCircles = (points: readonly Point[]): Shape[] => ended(points, circle, () => 0.3);
/** A line between two open diamonds. */
export const betweenDiamonds = (points: readonly Point[]): Shape[] => ended(points, diamond, diamondReach);
