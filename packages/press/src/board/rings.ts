import { centre, distance, outlineOf, type Place, type Point } from "@solvewright/engine";
import { extentOf, middleOf, together } from "../scene/extent.ts";
import type { Figure, LayerName, Paths } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import { distanceToSegment, segmentsOf } from "./segments.ts";

/** A rule in use: what of it is on the board, and its cells. */
export interface Ringed {
  readonly figures: readonly Figure[];
  readonly cells: readonly Place[];
  readonly of?: string;
}

const clear = 0.1;
const casing = 0.03;
const opening = (24 * Math.PI) / 180;

/** The directions in which the digits lie that a small clue speaks of. */
const directions = (at: Point, cells: readonly Place[]): number[] => {
  const middles = cells.map(centre);
  const least = Math.min(...middles.map((middle) => distance(at, middle)));
  return middles
    .filter((middle) => distance(at, middle) < Math.max(0.8, least + 0.01))
    .map(([x, y]) => Math.atan2(y - at[1], x - at[0]))
    .sort((a, b) => a - b);
};

/** What is left of the circle when it is opened in these directions. */
export const spansBetween = (open: readonly number[]): [from: number, to: number][] =>
  open.length === 0
    ? [
        [0, Math.PI],
        [Math.PI, 2 * Math.PI],
      ]
    : open.flatMap((from, k): [number, number][] => {
        const to = open[k + 1] ?? open[0]! + 2 * Math.PI;
        return to - from > 2 * opening + 0.1 ? [[from + opening, to - opening]] : [];
      });

const aroundSmall = (figures: readonly Figure[], cells: readonly Place[]): Figure[] => {
  const extent = together(figures.map(extentOf))!;
  const at = middleOf(extent);
  const beyond = clear + units.ring / 2;
  const radii = [(extent.right - extent.left) / 2 + beyond, (extent.bottom - extent.top) / 2 + beyond] as const;
  const spans = spansBetween(directions(at, cells));
  const arcs = (paint: "sheet" | "rule-use", width: number): Figure => ({
    shape: "arcs",
    layer: "ring",
    at,
    radii,
    spans,
    pen: { paint, width, cap: "round" },
  });
  return [arcs("sheet", units.ring + 2 * casing), arcs("rule-use", units.ring)];
};

const alongCells = (_: readonly Figure[], cells: readonly Place[]): Figure[] => {
  const paths = outlineOf(cells, 0.03).map((points) => ({ points, closed: true }));
  const line = (paint: "sheet" | "rule-use", width: number): Figure => ({
    shape: "paths",
    layer: "ring",
    paths,
    pen: { paint, width, join: "round" },
  });
  return [line("sheet", units.ring + 0.03), line("rule-use", units.ring)];
};

const isLine = (figure: Figure): figure is Paths => figure.shape === "paths";

const isOrnament = (figure: Figure): boolean => {
  if (!isLine(figure) || figure.fill !== undefined) return false;
  const { left, right, top, bottom } = extentOf(figure);
  return Math.max(right - left, bottom - top) < 0.6;
};

/** How far an ornament reaches from the line that bears it. */
const reachOf = ({ paths, pen }: Paths, lines: readonly Paths[]): number => {
  const segments = lines.flatMap((line) => line.paths.flatMap(({ points, closed }) => segmentsOf(points, closed)));
  const aside = (point: Point): number => Math.min(...segments.map((segment) => distanceToSegment(point, segment)));
  return Math.max(...paths.flatMap(({ points }) => points.map(aside))) + (pen?.width ?? 0) / 2;
};

/** Chevrons, strokes and heads left out, and the lines that bear them as wide as these reach: a rim without bumps. */
const withoutOrnaments = (figures: readonly Figure[]): Figure[] => {
  const rest = figures.filter((figure) => !isOrnament(figure));
  const [small, lines] = [figures.filter(isOrnament).filter(isLine), rest.filter(isLine)];
  if (small.length === 0 || lines.length === 0) return [...figures];
  const width = 2 * Math.max(...small.map((ornament) => reachOf(ornament, lines)));
  return rest.map((figure) =>
    isLine(figure) && figure.pen
      ? { ...figure, pen: { ...figure.pen, width: Math.max(width, figure.pen.width) } }
      : figure,
  );
};

/** Under the digits, which it would cut: they clear their surroundings where it runs. */
const alongLine = (figures: readonly Figure[]): Figure[] => {
  const rim = (fill: "sheet" | "rule-use", inner: number, outer: number): Figure => ({
    shape: "rim",
    layer: "rim",
    round: withoutOrnaments(figures),
    inner,
    outer,
    fill,
  });
  return [rim("sheet", clear - casing, clear + units.ring + casing), rim("rule-use", clear, clear + units.ring)];
};

/** How a clue is ringed follows from where it is drawn; the first that fits. */
const ways: readonly (readonly [LayerName, (figures: readonly Figure[], cells: readonly Place[]) => Figure[]])[] = [
  ["cage", alongCells],
  ["line", alongLine],
  ["area", alongLine],
  ["edge", aroundSmall],
  ["outside", aroundSmall],
];

const wayOf = (drawn: readonly { readonly layer: string }[]) =>
  ways.find(([layer]) => drawn.some((figure) => figure.layer === layer));

/** Whether a ring round what is drawn so runs through its cells. */
export const runsThroughCells = (drawn: readonly { readonly layer: string }[]): boolean =>
  wayOf(drawn)?.[1] === alongLine;

/** A green ring round a clue: open toward the digits beside a small one, a second outline along a line or cage. */
export const ringFigures = ({ figures, cells, of }: Ringed): Figure[] => {
  const way = wayOf(figures);
  if (!way) return [];
  const [layer, draw] = way;
  const ring = draw(
    figures.filter((figure) => figure.layer === layer),
    cells,
  );
  return of === undefined ? ring : ring.map((figure) => ({ ...figure, of }));
};
