import type { BodyShape } from "../body.ts";
import type { SetBody } from "./cells.ts";
import { optional, path, whole } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** Cells anywhere, and what they add to where it is said. */
export interface CageBody extends SetBody {
  readonly sum?: number;
}
export interface CellsProductBody extends SetBody {
  readonly product: number;
}
export interface CellsSumBody extends SetBody {
  readonly sum: number;
}

export const cage: BodyShape<CageBody> = shapeOf({
  name: "cage",
  form: "{ cells, sum? }, or a list of them",
  gesture: "sweep",
  fields: { cells: path(), sum: optional(whole()) },
});

export const cellsProduct: BodyShape<CellsProductBody> = shapeOf({
  name: "cells with a product",
  form: "{ cells, product }, or a list of them",
  gesture: "sweep",
  fields: { cells: path(), product: whole({ most: Number.MAX_SAFE_INTEGER }) },
});

export const cellsSum: BodyShape<CellsSumBody> = shapeOf({
  name: "cells with a sum",
  form: "{ cells, sum }, or a list of them",
  gesture: "sweep",
  fields: { cells: path(), sum: whole() },
});
