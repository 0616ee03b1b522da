import type { Place } from "../../puzzle/canvas.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { optional, path, whole } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** Two cells that share a side. */
export interface PairBody extends Body {
  readonly cells: readonly Place[];
}
export interface PairByBody extends PairBody {
  readonly by?: number;
}

export const pairs: BodyShape<PairBody> = shapeOf({
  name: "pairs",
  form: "two cells that share a side, a list of such pairs, or { cells }",
  gesture: "edge",
  terse: "cells",
  fields: { cells: path({ least: 2, most: 2, beside: "side" }) },
});

/** As `pairs`, with a number `by` that is at least `least`. */
export const pairsBy = (least: number): BodyShape<PairByBody> =>
  shapeOf({
    name: "pairs by",
    form: "two cells that share a side, a list of such pairs, or { cells, by }",
    gesture: "edge",
    terse: "cells",
    fields: { cells: path({ least: 2, most: 2, beside: "side" }), by: optional(whole({ least })) },
  });
