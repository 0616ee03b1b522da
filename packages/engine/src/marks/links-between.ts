import { distance, towards } from "./points.ts";
import type { Point } from "./shape.ts";

/** The straight pieces from point to point, less the reach of what stands at each of them on the way to the other. */
export const linksBetween = (
  points: readonly Point[],
  reach: (k: number, from: Point, to: Point) => number,
): (readonly [Point, Point])[] =>
  points.slice(1).map((to, k) => {
    const from = points[k]!;
    const far = distance(from, to);
    return [towards(from, to, reach(k, from, to)), towards(from, to, far - reach(k + 1, to, from))];
  });
