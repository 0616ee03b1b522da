import type { Place } from "../../puzzle/canvas.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { digits, path } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** Cells in any order and anywhere, one or more. */
export interface SetBody extends Body {
  readonly cells: readonly Place[];
}
export interface CellsDigitsBody extends SetBody {
  /** Each once, in the order of the file. */
  readonly digits: readonly number[];
}

export const cells: BodyShape<SetBody> = shapeOf({
  name: "cells",
  form: "cells, a list of such sets, or { cells }",
  gesture: "sweep",
  terse: "cells",
  fields: { cells: path() },
});

export const cellsDigits: BodyShape<CellsDigitsBody> = shapeOf({
  name: "cells with digits",
  form: "{ cells, digits }, or a list of them",
  gesture: "sweep",
  fields: { cells: path(), digits: digits({ distinct: true }) },
});
