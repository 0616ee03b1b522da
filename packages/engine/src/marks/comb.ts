import { across, evenly, halfway, type OnLine } from "./along.ts";
import { heavy, inked, pen } from "./pen.ts";
import { distance } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

/** Wide enough that a digit stands in it. */
const ring = 0.3;

/** The middle cell, or the middle of the step between the two. */
const middleOf = (points: readonly Point[]): OnLine => {
  const middle = (points.length - 1) / 2;
  return halfway(points[Math.floor(middle)]!, points[Math.ceil(middle)]!);
};

/** A line with a stroke across every .2; a ring round its middle cell, or a long stroke where the middle lies on a step. */
export const comb = (points: readonly Point[]): Shape[] => {
  const hasCell = points.length % 2 === 1;
  const middle = middleOf(points);
  const teeth = evenly(points, 0.2).filter(({ at }) => distance(at, middle.at) > (hasCell ? ring + 0.04 : 0.09));
  return [
    inked(points, pen(0.045), heavy),
    ...teeth.map((place) => inked(across(place, 0.26), pen(0.04))),
    hasCell
      ? { shape: "disc", layer: "line", at: middle.at, radius: ring, fill: "sheet", stroke: pen(0.045) }
      : inked(across(middle, 0.5), pen(0.06)),
  ];
};
