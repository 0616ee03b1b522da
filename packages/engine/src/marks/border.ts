import type { Place } from "../puzzle/canvas.ts";
import { outlineOf } from "./outline.ts";
import { between, distance } from "./points.ts";
import type { Ink, Point, Shape } from "./shape.ts";

/** How an area with a border of its own looks. */
export interface BorderLook {
  /** Its cells in reading order; its label stands in the first. */
  readonly places: readonly Place[];
  /** Ink, or what a tint colours. */
  readonly ink: Ink;
  /** The label gives way to a mark on the left side of the first cell. */
  readonly pushed: boolean;
}

const inset = 0.08;

/** The dash and gap nearest to these that begin and end a side of this length with a whole dash. */
export const fitted = (length: number, dash: number, gap: number): readonly [number, number] => {
  const gaps = Math.max(1, Math.round((length - dash) / (dash + gap)));
  return [dash, (length - dash * (gaps + 1)) / gaps];
};

const sides = (loop: readonly Point[]): [Point, Point][] => loop.map((from, k) => [from, loop[(k + 1) % loop.length]!]);

/** Lengthened at both ends by half the width, so that two sides close their corner. */
const closing = ([from, to]: readonly [Point, Point], width: number): [Point, Point] => {
  const share = width / 2 / distance(from, to);
  return [between(from, to, -share), between(from, to, 1 + share)];
};

const bordered =
  (dash: number, gap: number, width: number) =>
  ({ places, ink }: BorderLook): Shape[] =>
    outlineOf(places, inset)
      .flatMap(sides)
      .map((side) => closing(side, width))
      .map((points) => ({
        shape: "line",
        layer: "cage",
        points,
        stroke: { ink, width, dash: fitted(distance(...points), dash, gap) },
      }));

/** The border of an area that repeats no digit. */
export const dashedBorder = bordered(0.09, 0.06, 0.026);
/** The border of an area that may repeat digits. */
export const dottedBorder = bordered(0.03, 0.045, 0.03);

/** The label at the top left of the area's first cell. */
export const areaLabel = ({ places, pushed }: BorderLook, text: string): Shape => {
  const { row, column } = places[0]!;
  const at: Point = [column - 1 + 0.07 + (pushed ? 0.18 : 0), row - 1 + 0.3];
  return { shape: "text", layer: "cage", at, text, size: 0.3, weight: 700, anchor: "start", plate: true, fill: "ink" };
};
