import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { listOf, optional, text, word } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** Ids of grids; every grid (that it fits) where left out. */
export interface WholeGridBody extends Body {
  readonly grids?: readonly string[];
}
export interface WholeGridWhichBody extends WholeGridBody {
  /** Both where left out. */
  readonly which?: "down" | "up" | "both";
}

const grids = optional(listOf(text("the id of a grid"), "ids of grids", 1));

export const wholeGrid: BodyShape<WholeGridBody> = shapeOf({
  name: "whole grid",
  form: "nothing, or { grids: [ids] }",
  gesture: "none",
  mayBeEmpty: true,
  fields: { grids },
});

/** As `wholeGrid`, with which of two diagonals; turning by a quarter and mirroring swap them. */
export const wholeGridWhich: BodyShape<WholeGridWhichBody> = shapeOf({
  name: "whole grid which",
  form: "nothing, or { grids: [ids], which: down, up or both }",
  gesture: "none",
  mayBeEmpty: true,
  fields: { grids, which: optional(word("down", "up", "both")) },
  turn: (body, turning) => ({ ...body, ...(body.which ? { which: turning.diagonal(body.which) } : {}) }),
});
