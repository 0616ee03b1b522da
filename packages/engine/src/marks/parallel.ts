import { angleOf, atPoint, beside } from "./along.ts";
import type { Point } from "./shape.ts";

/** The line that runs `aside` to the right of this one, its corners where the two sides meet. */
export const sideOf = (points: readonly Point[], aside: number): Point[] =>
  points.map((_, k) => {
    const place = atPoint(points, k);
    const next = points[k + 1];
    const half = next === undefined || k === 0 ? 0 : angleOf(points[k]!, next) - place.angle;
    return beside(place, 0, aside / Math.cos(half));
  });
