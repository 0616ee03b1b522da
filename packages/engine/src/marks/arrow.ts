import { angleOf, atPoint, beside, type OnLine } from "./along.ts";
import { sideOf } from "./parallel.ts";
import { inked, pen } from "./pen.ts";
import { distance, towards } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

const radius = 0.38;
const fine = pen(0.04, { cap: "round" });

const circle = (at: Point): Shape => ({ shape: "disc", layer: "line", at, radius, stroke: fine });

/** Softening takes as much from the long side of a pill as from the short steps of its cap: so it stays straight. */
const lead = 0.1;

/** Half a circle round the end of a line, from its right side to its left, with a little of both sides. */
const cap = (end: OnLine): Point[] => [
  beside(end, -lead, radius),
  ...Array.from({ length: 13 }, (_, k) => {
    const turn = (Math.PI * (6 - k)) / 12;
    return beside(end, Math.cos(turn) * radius, Math.sin(turn) * radius);
  }),
  beside(end, -lead, -radius),
];

/** Round the cells of a total of several; a bent one bends too. */
const pill = (points: readonly Point[]): Shape => {
  const back = [...points].reverse();
  const half = (line: readonly Point[]): Point[] => [
    ...sideOf(line, radius).slice(0, -1),
    ...cap(atPoint(line, line.length - 1)),
  ];
  return {
    shape: "line",
    layer: "line",
    points: [...half(points).slice(1), ...half(back).slice(1)],
    closed: true,
    round: radius,
    stroke: fine,
  };
};

/** The circle of an arrow, or the pill round its two or three cells. */
const circleOrPill = (points: readonly Point[]): Shape => (points.length === 1 ? circle(points[0]!) : pill(points));

/** An open head of .24 with its tip here. */
const headAt = (tip: Point, angle: number): Shape => {
  const wing = (turn: number): Point => [
    tip[0] - Math.cos(angle + turn) * 0.24,
    tip[1] - Math.sin(angle + turn) * 0.24,
  ];
  return inked([wing(0.55), tip, wing(-0.55)], fine);
};

/** From the edge of the nearest cell of the total along the shaft, with a head a little beyond its last cell. */
export const arrowDrawing = (total: readonly Point[], shaft: readonly Point[]): Shape[] => {
  const [first] = shaft as [Point];
  const from = [...total].sort((a, b) => distance(a, first) - distance(b, first))[0]!;
  const points = [towards(from, first, radius), ...shaft];
  const end = atPoint(points, points.length - 1);
  const tip = beside(end, 0.14, 0);
  return [
    circleOrPill(total),
    { ...inked([...points.slice(0, -1), tip], fine), round: 0.14 } as Shape,
    headAt(tip, end.angle),
  ];
};

/** A circle at both ends, and a head at both circles. */
export const doubleArrowDrawing = (points: readonly Point[]): Shape[] => {
  const [first, last] = [points[0]!, points.at(-1)!];
  const [start, end] = [towards(first, points[1]!, radius), towards(last, points.at(-2)!, radius)];
  return [
    circle(first),
    circle(last),
    { ...inked([start, ...points.slice(1, -1), end], fine), round: 0.14 } as Shape,
    headAt(start, angleOf(points[1]!, first)),
    headAt(end, angleOf(points.at(-2)!, last)),
  ];
};
