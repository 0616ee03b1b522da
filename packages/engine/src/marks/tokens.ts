import { angleOf } from "./along.ts";
import { heavy, inked, pen } from "./pen.ts";
import { distance, towards } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

const full = { fill: "clue-ink" } as const;
const open = { stroke: pen(0.045) } as const;
type Look = typeof full | typeof open;

const disc = (at: Point, radius: number, look: Look): Shape => ({ shape: "disc", layer: "line", at, radius, ...look });
const square = (at: Point, side: number, look: Look): Shape => ({
  shape: "box",
  layer: "line",
  at,
  width: side,
  height: side,
  ...look,
});
/** A polygon of so many corners, the first one on top. */
const polygon = ([x, y]: Point, corners: number, radius: number, look: Look): Shape => ({
  shape: "line",
  layer: "line",
  points: Array.from({ length: corners }, (_, k): Point => {
    const angle = (2 * Math.PI * k) / corners - Math.PI / 2;
    return [x + Math.cos(angle) * radius, y + Math.sin(angle) * radius];
  }),
  closed: true,
  ...look,
});

const inTurn: readonly ((at: Point) => Shape)[] = [
  (at) => disc(at, 0.14, full),
  (at) => square(at, 0.25, full),
  ([x, y]) => polygon([x, y + 0.02], 3, 0.18, full),
  (at) => polygon(at, 4, 0.17, full),
  (at) => disc(at, 0.14, open),
  (at) => square(at, 0.25, open),
  ([x, y]) => polygon([x, y + 0.02], 3, 0.18, open),
  (at) => polygon(at, 4, 0.17, open),
];

/** On a dashed line a token a cell: as many tokens in turn as there are remainders, eight at most. */
export const tokensInTurn = (points: readonly Point[], number: number): Shape[] => [
  inked(points, pen(0.06, { dash: [0.15, 0.1] }), heavy),
  ...points.map((at, k) => inTurn[(k % number) % inTurn.length]!(at)),
];

const ring = 0.16;
/** From the middle of the token to its edge on the way to a point. */
const reach = (isRing: boolean, from: Point, to: Point): number => {
  const angle = angleOf(from, to);
  return isRing ? ring : 0.15 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
};

/** Open circles and squares in turn, with lines from edge to edge. */
export const circlesAndSquares = (points: readonly Point[]): Shape[] => [
  ...points.slice(1).map((to, k) => {
    const from = points[k]!;
    const start = reach(k % 2 === 0, from, to);
    const end = distance(from, to) - reach(k % 2 === 1, to, from);
    return inked([towards(from, to, start), towards(from, to, end)], pen(0.05), heavy);
  }),
  ...points.map((at, k) => (k % 2 === 0 ? disc(at, ring, open) : square(at, 0.3, open))),
];
