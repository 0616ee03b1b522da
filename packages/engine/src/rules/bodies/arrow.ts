import { nameOf, type Place } from "../../puzzle/canvas.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { path } from "./fields.ts";
import { touch, writePath } from "./path-text.ts";
import { shapeOf } from "./shape.ts";

/** The cells of the circle or pill in reading order, and the shaft from there outward. */
export interface ArrowBody extends Body {
  readonly total: readonly Place[];
  readonly along: readonly Place[];
}

/** Every cell further right or further down than the one before, and never back. */
const isInReadingOrder = (total: readonly Place[]): boolean =>
  total.slice(1).every(({ row, column }, k) => row >= total[k]!.row && column >= total[k]!.column);

export const arrowBody: BodyShape<ArrowBody> = shapeOf({
  name: "arrow",
  form: "{ total, along }, or a list of them: a path of one to three cells and a path that starts beside it",
  gesture: "drag",
  fields: { total: path({ most: 3, beside: "corner" }), along: path({ beside: "corner" }) },
  check: ({ total, along }) => {
    const twice = along.find((cell) => total.some((other) => nameOf(other) === nameOf(cell)));
    if (twice) return [{ at: ["along"], read: nameOf(twice), right: "cells along that are not in the total" }];
    if (total.some((cell) => touch(cell, along[0]!))) return [];
    return [{ at: ["along"], read: nameOf(along[0]!), right: `a first cell beside the total, ${writePath(total)}` }];
  },
  remarks: ({ total }) =>
    isInReadingOrder(total)
      ? []
      : [
          {
            at: ["total"],
            read: writePath(total),
            right: "cells from left to right or top to bottom; they are read in this order",
          },
        ],
});
