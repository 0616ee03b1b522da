import type { Point } from "@solvewright/engine";
import type { Path } from "../scene/figure.ts";

/** How many units of the picture's own system one cell is. Type smaller than 1 unit is set badly by browsers. */
const unit = 100;

/** A length in the picture's units, to three decimals. */
export const length = (cells: number): string => String(Math.round(cells * unit * 1000) / 1000 + 0);
const pair = ([x, y]: Point): string => `${length(x)} ${length(y)}`;

const towards = (from: Point, to: Point, by: number): Point => {
  const whole = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = whole === 0 ? 0 : Math.min(by, whole / 2) / whole;
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
};

const softened = (before: Point, corner: Point, after: Point, round: number): string =>
  `${pair(towards(corner, before, round))}Q${pair(corner)} ${pair(towards(corner, after, round))}`;

const open = (points: readonly Point[], round: number): string =>
  points
    .map((point, k) => {
      const [before, after] = [points[k - 1], points[k + 1]];
      return round > 0 && before && after ? softened(before, point, after, round) : pair(point);
    })
    .join("L");

const closed = (points: readonly Point[], round: number): string =>
  points
    .map((point, k) =>
      round > 0 ? softened(points.at(k - 1)!, point, points[(k + 1) % points.length]!, round) : pair(point),
    )
    .join("L");

const pathOf = ({ points, round = 0, closed: shut = false }: Path): string =>
  shut ? `M${closed(points, round)}Z` : `M${open(points, round)}`;

/** The `d` of a path that goes through all of these. */
export const dataOf = (paths: readonly Path[]): string => paths.map(pathOf).join("");

const onEllipse = ([x, y]: Point, [rx, ry]: readonly [number, number], angle: number): Point => [
  x + rx * Math.cos(angle),
  y + ry * Math.sin(angle),
];

/** The `d` of pieces of an ellipse. */
export const arcData = (
  at: Point,
  radii: readonly [number, number],
  spans: readonly (readonly [from: number, to: number])[],
): string =>
  spans
    .map(([from, to]) => {
      const large = to - from > Math.PI ? 1 : 0;
      const [start, end] = [onEllipse(at, radii, from), onEllipse(at, radii, to)];
      return `M${pair(start)}A${length(radii[0])} ${length(radii[1])} 0 ${large} 1 ${pair(end)}`;
    })
    .join("");
