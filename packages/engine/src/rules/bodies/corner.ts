import type { Place } from "../../puzzle/canvas.ts";
import type { BodyShape, Turning } from "../body.ts";
import type { Body } from "../contract.ts";
import { digits, place, whole } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** A corner where four cells meet. */
export interface CornerDigitsBody extends Body {
  /** The top left of the four cells. */
  readonly at: Place;
  /** One to four, each as often as it is to be found. */
  readonly digits: readonly number[];
}

/** A square block of cells. */
export interface CornerBlockBody extends Body {
  /** Its top left cell. */
  readonly at: Place;
  /** Its rows and columns. */
  readonly size: number;
}

const turnedBlock = (at: Place, size: number, turning: Turning): Place => {
  const one = turning.place(at);
  const other = turning.place({ row: at.row + size - 1, column: at.column + size - 1 });
  return { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) };
};

export const cornerDigits: BodyShape<CornerDigitsBody> = shapeOf({
  name: "corner with digits",
  form: "{ at, digits }, or a list of them; at is the top left of the four cells",
  gesture: "corner",
  fields: { at: place(), digits: digits({ most: 4 }) },
  turn: (body, turning) => ({ ...body, at: turnedBlock(body.at, 2, turning) }),
});

export const cornerBlock: BodyShape<CornerBlockBody> = shapeOf({
  name: "block",
  form: "{ at, size }, or a list of them; at is the top left cell of the block",
  gesture: "corner",
  fields: { at: place(), size: whole({ least: 3, most: 25 }) },
  turn: (body, turning) => ({ ...body, at: turnedBlock(body.at, body.size, turning) }),
});
