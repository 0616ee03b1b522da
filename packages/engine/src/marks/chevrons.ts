import { across, angleOf, beside, type OnLine } from "./along.ts";
import { heavy, inked, pen } from "./pen.ts";
import { between } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

const thin = pen(0.05, { cap: "round" });

/** The two wings of a chevron, which points ahead. */
const chevronAt = (place: OnLine): Shape =>
  inked([beside(place, -0.15, -0.14), place.at, beside(place, -0.15, 0.14)], thin);

/** On a step between two cells; on a diagonal one it keeps off the corner of the cells. */
const onStep = (from: Point, to: Point): OnLine => {
  const isDiagonal = from[0] !== to[0] && from[1] !== to[1];
  return { at: between(from, to, isDiagonal ? 1 / 3 : 0.5), angle: angleOf(from, to) };
};

/** A line with a chevron on each step toward its middle, and a stroke across where the middle lies on a step. */
export const chevrons = (points: readonly Point[]): Shape[] => {
  const half = Math.floor((points.length - 1) / 2);
  const inward = (list: readonly Point[]): Shape[] =>
    list.slice(0, half).map((from, k) => chevronAt(onStep(from, list[k + 1]!)));
  const mirror =
    points.length % 2 === 1 ? [] : [inked(across(onStep(points[half]!, points[half + 1]!), 0.36), pen(0.06))];
  return [inked(points, pen(0.09), heavy), ...inward(points), ...inward([...points].reverse()), ...mirror];
};
