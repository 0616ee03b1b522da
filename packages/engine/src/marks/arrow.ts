import type { Point, Shape, Stroke } from "./shape.ts";

const pen: Stroke = { ink: "clue-ink", width: 0.04, cap: "round" };
const radius = 0.38;

/** The circle of an arrow, or the pill round its two or three cells. */
export const circleOrPill = (at: readonly Point[]): Shape => {
  const xs = at.map(([x]) => x);
  const ys = at.map(([, y]) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return {
    shape: "box",
    layer: "line",
    at: [(left + right) / 2, (top + bottom) / 2],
    width: right - left + 2 * radius,
    height: bottom - top + 2 * radius,
    round: radius,
    stroke: pen,
  };
};

/** A shaft with an open head of .24 at its end, drawn a little beyond the last point. */
export const arrowHead = (points: readonly Point[]): Shape[] => {
  const [before, end] = [points.at(-2)!, points.at(-1)!];
  const angle = Math.atan2(end[1] - before[1], end[0] - before[0]);
  const tip: Point = [end[0] + Math.cos(angle) * 0.14, end[1] + Math.sin(angle) * 0.14];
  const wing = (turn: number): Point => [tip[0] - Math.cos(angle + turn) * 0.24, tip[1] - Math.sin(angle + turn) * 0.24];
  return [
    { shape: "line", layer: "line", points: [...points.slice(0, -1), tip], round: 0.14, stroke: pen },
    { shape: "line", layer: "line", points: [wing(0.55), tip, wing(-0.55)], stroke: pen },
  ];
};
