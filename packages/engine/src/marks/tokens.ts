import { angleOf } from "./along.ts";
import { fitted } from "./border.ts";
import { linksBetween } from "./links-between.ts";
import { heavy, inked, pen } from "./pen.ts";
import { distance } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

/** Pale and wide, so that a digit can stand on them. */
const full = { fill: "clue", stroke: pen(0.03) } as const;
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

const inTurn: readonly ((at: Point) => Shape)[] = [full, open].flatMap((look) => [
  (at: Point) => disc(at, 0.27, look),
  (at: Point) => square(at, 0.48, look),
  ([x, y]: Point) => polygon([x, y + 0.07], 3, 0.38, look),
  (at: Point) => polygon(at, 4, 0.34, look),
]);

const clear = 0.29;
const dashed = (link: readonly [Point, Point]): Shape =>
  inked(link, pen(0.06, { dash: fitted(distance(...link), 0.15, 0.1) }), heavy);

/** A token a cell with a dashed line from one to the next: as many tokens in turn as there are remainders, eight at most. */
export const tokensInTurn = (points: readonly Point[], number: number): Shape[] => [
  ...linksBetween(points, () => clear).map(dashed),
  ...points.map((at, k) => inTurn[(k % number) % inTurn.length]!(at)),
];

const ring = 0.29;
const side = 0.52;
const isRing = (k: number): boolean => k % 2 === 0;
/** From the middle of the square to its edge on the way to a point. */
const squareReach = (from: Point, to: Point): number => {
  const angle = angleOf(from, to);
  return side / 2 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
};

/** Open circles and squares in turn, so wide that a digit stands in them, with lines from edge to edge. */
export const circlesAndSquares = (points: readonly Point[]): Shape[] => [
  ...linksBetween(points, (k, from, to) => (isRing(k) ? ring : squareReach(from, to))).map((link) =>
    inked(link, pen(0.05), heavy),
  ),
  ...points.map((at, k) => (isRing(k) ? disc(at, ring, open) : square(at, side, open))),
];
