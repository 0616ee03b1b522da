import { beside, evenly } from "./along.ts";
import { inked, pen } from "./pen.ts";
import type { Point, Shape } from "./shape.ts";

/** A line that swings .11 to each side in turn. */
export const zigzag = (points: readonly Point[]): Shape[] => {
  const places = evenly(points, 0.17);
  const swung = places.map((place, k) => {
    const isEnd = k === 0 || k === places.length - 1;
    return beside(place, 0, isEnd ? 0 : k % 2 === 0 ? 0.11 : -0.11);
  });
  return [inked(swung, pen(0.05), 0.9)];
};
