import { outlineOf, type Place, type Point } from "@solvewright/engine";
import { type Extent, together } from "../scene/extent.ts";
import type { Figure, Path } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import { areaOf } from "./sheets.ts";

const apart = 0.09;
/** How far a bracket reaches along the house from its end. */
const reach = 0.35;

/** The piece of a level or upright line that lies within these bounds, if any does. */
const within = (from: Point, to: Point, { left, top, right, bottom }: Extent): readonly [Point, Point] | undefined => {
  const held = ([x, y]: Point): Point => [Math.min(right, Math.max(left, x)), Math.min(bottom, Math.max(top, y))];
  const [a, b] = [held(from), held(to)];
  const inside = (p: Point): boolean => (from[0] === to[0] ? p[0] === from[0] : p[1] === from[1]);
  return inside(a) && inside(b) && (a[0] !== b[0] || a[1] !== b[1]) ? [a, b] : undefined;
};

/** The stretches of a closed way that lie within these bounds. */
const stretches = (loop: readonly Point[], bounds: Extent): Point[][] => {
  const found: Point[][] = [];
  loop.forEach((from, k) => {
    const piece = within(from, loop[(k + 1) % loop.length]!, bounds);
    if (!piece) return;
    const last = found.at(-1);
    if (last && `${last.at(-1)}` === `${piece[0]}`) last.push(piece[1]);
    else found.push([...piece]);
  });
  const [first, last] = [found[0], found.at(-1)];
  if (first && last && first !== last && `${last.at(-1)}` === `${first[0]}`)
    return [[...last, ...first.slice(1)], ...found.slice(1, -1)];
  return found;
};

/** A bracket at both ends of a house, along whichever way it is longer; its outline cut short, whatever its shape. */
const bracketsOf = (places: readonly Place[]): Path[] => {
  const loops = outlineOf(places, -apart);
  const bounds = together(loops.flat().map(([x, y]) => ({ left: x, top: y, right: x, bottom: y })));
  if (!bounds) return [];
  const isTall = bounds.bottom - bounds.top > bounds.right - bounds.left;
  const ends: Extent[] = isTall
    ? [
        { ...bounds, bottom: bounds.top + reach },
        { ...bounds, top: bounds.bottom - reach },
      ]
    : [
        { ...bounds, right: bounds.left + reach },
        { ...bounds, left: bounds.right - reach },
      ];
  return ends.flatMap((end) => loops.flatMap((loop) => stretches(loop, end))).map((points) => ({ points }));
};

/** A house that a step uses: a pale band, and a bracket at both ends. Cells with a sign of their own bear no band. */
export const houseFigures = (places: readonly Place[], bearing: ReadonlySet<string>, of?: string): Figure[] => {
  const about = of === undefined ? {} : { of };
  const bare = places.filter(({ row, column }) => !bearing.has(`r${row}c${column}`));
  const paths = bracketsOf(places);
  const bracket = (paint: "sheet" | "because", width: number): Figure => ({
    ...about,
    shape: "paths",
    layer: "bracket",
    paths,
    pen: { paint, width, cap: "round", join: "miter" },
  });
  return [
    ...(bare.length > 0 ? [{ ...about, ...areaOf(bare), layer: "band", fill: "house" } as const] : []),
    bracket("sheet", units.house + 0.06),
    bracket("because", units.house),
  ];
};
