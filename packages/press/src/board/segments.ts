import { between, distance, type Point } from "@solvewright/engine";

/** A straight piece. */
export type Segment = readonly [from: Point, to: Point];

export const segmentsOf = (points: readonly Point[], closed = false): Segment[] =>
  (closed ? [...points, points[0]!] : points).slice(1).map((to, k) => [points[k]!, to]);

export const distanceToSegment = (point: Point, [from, to]: Segment): number => {
  const whole = distance(from, to);
  if (whole === 0) return distance(point, from);
  const along = ((point[0] - from[0]) * (to[0] - from[0]) + (point[1] - from[1]) * (to[1] - from[1])) / whole ** 2;
  return distance(point, between(from, to, Math.min(1, Math.max(0, along))));
};
