import { between, distance } from "./points.ts";
import type { Point } from "./shape.ts";

/** A place on a line and the way that the line runs there, in radians; at a bend, halfway between its two ways. */
export interface OnLine {
  readonly at: Point;
  readonly angle: number;
}

export const angleOf = ([ax, ay]: Point, [bx, by]: Point): number => Math.atan2(by - ay, bx - ax);

/** A line of one cell as a short stroke through it. */
export const asLine = (points: readonly Point[]): readonly Point[] => {
  const [first, ...rest] = points as readonly [Point, ...Point[]];
  return rest.length > 0 ? points : [-0.2, 0.2].map((aside): Point => [first[0] + aside, first[1]]);
};

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, point, k) => sum + distance(points[k]!, point), 0);

/** The place at that point of the line, by its index. */
export const atPoint = (points: readonly Point[], k: number): OnLine => {
  const ways = [points[k - 1], points[k + 1]].map((other, side) => {
    if (other === undefined) return [0, 0] as const;
    const angle = side === 0 ? angleOf(other, points[k]!) : angleOf(points[k]!, other);
    return [Math.cos(angle), Math.sin(angle)] as const;
  });
  const [[ax, ay], [bx, by]] = ways as [Point, Point];
  return { at: points[k]!, angle: Math.atan2(ay + by, ax + bx) };
};

/** The middle of the way from one point to the next. */
export const halfway = (from: Point, to: Point): OnLine => ({ at: between(from, to), angle: angleOf(from, to) });

const near = 1e-6;

/** The place so far along the line from its start. */
export const along = (points: readonly Point[], far: number): OnLine => {
  let left = far;
  for (let k = 0; k + 1 < points.length; k++) {
    const [from, to] = [points[k]!, points[k + 1]!];
    const length = distance(from, to);
    if (left < near) return atPoint(points, k);
    if (left < length - near) return { at: between(from, to, left / length), angle: angleOf(from, to) };
    left -= length;
  }
  return atPoint(points, points.length - 1);
};

/** Places from end to end of the line, about that far apart, both ends among them. */
export const evenly = (points: readonly Point[], apart: number): OnLine[] => {
  const length = lengthOf(points);
  const steps = Math.max(1, Math.round(length / apart));
  return Array.from({ length: steps + 1 }, (_, k) => along(points, (length * k) / steps));
};

/** The point that far ahead on the line's way, and that far to its right. */
export const beside = ({ at: [x, y], angle }: OnLine, ahead: number, aside: number): Point => [
  x + Math.cos(angle) * ahead - Math.sin(angle) * aside,
  y + Math.sin(angle) * ahead + Math.cos(angle) * aside,
];

/** The two ends of a stroke across the line. */
export const across = (place: OnLine, length: number, ahead = 0): [Point, Point] => [
  beside(place, ahead, -length / 2),
  beside(place, ahead, length / 2),
];
