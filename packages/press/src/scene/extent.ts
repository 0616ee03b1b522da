import type { Point } from "@solvewright/engine";
import type { Figure } from "./figure.ts";
import { widthOf } from "./letters.ts";

/** A rectangle in grid units. */
export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const around = ([x, y]: Point, halfWidth: number, halfHeight: number): Extent => ({
  left: x - halfWidth,
  top: y - halfHeight,
  right: x + halfWidth,
  bottom: y + halfHeight,
});

export const grown = ({ left, top, right, bottom }: Extent, by: number): Extent => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
});

/** The smallest rectangle round all of them; undefined round nothing. */
export const together = (extents: readonly Extent[]): Extent | undefined =>
  extents.length === 0
    ? undefined
    : {
        left: Math.min(...extents.map(({ left }) => left)),
        top: Math.min(...extents.map(({ top }) => top)),
        right: Math.max(...extents.map(({ right }) => right)),
        bottom: Math.max(...extents.map(({ bottom }) => bottom)),
      };

/** The area that two rectangles share. */
export const shared = (a: Extent, b: Extent): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

export const middleOf = ({ left, top, right, bottom }: Extent): Point => [(left + right) / 2, (top + bottom) / 2];

const roundPoints = (points: readonly Point[]): Extent => together(points.map((point) => around(point, 0, 0)))!;

/** Digits and capitals are three quarters of the size high and round ones a little more; small letters hang below. */
const roundText = ({ at: [x, y], text, size, weight = 500, anchor = "middle" }: Figure & { shape: "text" }): Extent => {
  const width = widthOf(text, weight) * size;
  const left = { start: x, middle: x - width / 2, end: x - width }[anchor];
  return { left, top: y - size * 0.78, right: left + width, bottom: y + size * (/[a-z,;]/.test(text) ? 0.26 : 0.02) };
};

const bare = (figure: Figure): Extent => {
  switch (figure.shape) {
    case "paths":
      return roundPoints(figure.paths.flatMap(({ points }) => points));
    case "disc":
      return around(figure.at, figure.radius, figure.radius);
    case "box":
      return around(figure.at, figure.width / 2, figure.height / 2);
    case "arcs":
      return around(figure.at, ...figure.radii);
    case "text":
      return roundText(figure);
    case "rim":
      return grown(together(figure.round.map(extentOf))!, figure.outer);
  }
};

/** The rectangle that a figure takes up, its stroke included. */
export const extentOf = (figure: Figure): Extent => grown(bare(figure), (figure.pen?.width ?? 0) / 2);
