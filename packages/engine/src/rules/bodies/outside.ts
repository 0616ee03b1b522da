import type { Random } from "../../random.ts";
import type { BodyShape, FaultInText, GridLine, Ground, Side, Turning } from "../body.ts";
import type { Body } from "../contract.ts";
import { type Field, optional, text, whole, word } from "./fields.ts";
import { type BodyOf, drawn, type Fields, shapeOf } from "./shape.ts";

/** A clue on a row or a column of a grid: exactly one of `row` and `column`, counted in the grid from 1. */
export interface OutsideBody extends Body {
  /** The grid's id; where left out, the only grid that has such a line. */
  readonly grid?: string;
  readonly row?: number;
  readonly column?: number;
  /** The side from which the line is read. */
  readonly from?: Side;
}

const number = (): Field<number> & { readonly optional: true } => optional(whole({ least: 1, most: 25 }));
const from = word("left", "right", "top", "bottom");
const lineFields = { grid: optional(text("the id of a grid")), row: number(), column: number() };

const sides = { row: ["left", "right"], column: ["top", "bottom"] } as const;

const oneLine = ({ row, column, from }: OutsideBody): FaultInText[] => {
  if (row === undefined && column === undefined)
    return [{ read: "no line", right: "a row or a column as well, such as row: 2" }];
  if (row !== undefined && column !== undefined)
    return [{ at: ["column"], atKey: true, read: "a row and a column", right: "either of them, not both" }];
  const axis = row === undefined ? "column" : "row";
  const fits = from === undefined || sides[axis].some((side) => side === from);
  return fits ? [] : [{ at: ["from"], read: from, right: `${sides[axis].join(" or ")} of a ${axis}` }];
};

/** The line that a body names. */
export const gridLineOf = ({ grid, row, column, from }: OutsideBody): GridLine => ({
  axis: row === undefined ? "column" : "row",
  number: (row ?? column)!,
  ...(grid === undefined ? {} : { grid }),
  ...(from === undefined ? {} : { from }),
});

/** The same clue on the turned line; its keys stay in their order. */
const turnLine = <B extends OutsideBody>(body: B, turning: Turning): B => {
  const { grid, axis, number, from } = turning.line(gridLineOf(body));
  const { grid: _, row: __, column: ___, from: ____, ...others } = body;
  const line = { ...(grid === undefined ? {} : { grid }), [axis]: number, ...(from === undefined ? {} : { from }) };
  return { ...line, ...others } as unknown as B;
};

const drawnLine = (random: Random, { canvas }: Ground): OutsideBody => {
  const axis = random.pick(["row", "column"] as const);
  return { [axis]: 1 + random.below(canvas.rows), from: random.pick(sides[axis]) };
};

/**
 * An outside clue with what it says (`sum`, `sees`, `digit`, ...) as fields of its own. `from: true` demands the side;
 * `"optional"` takes it as where the clue stands; `false` knows none.
 */
export const outside = <F extends Fields>(spec: {
  readonly numbers: F;
  readonly from: boolean | "optional";
}): BodyShape<OutsideBody & BodyOf<F>> => {
  const side = spec.from === false ? {} : { from: spec.from === true ? from : optional(from) };
  const said = Object.entries(spec.numbers).map(([key, field]) => (field.optional ? `, ${key}?` : `, ${key}`));
  const sideSaid = spec.from === false ? "" : spec.from === true ? ", from" : ", from?";
  return shapeOf<Fields>({
    name: "outside",
    form: `{ grid?, row or column${sideSaid}${said.join("")} }, or a list of them`,
    gesture: "margin",
    fields: { ...lineFields, ...side, ...spec.numbers },
    check: (body) => oneLine(body as OutsideBody),
    draw: (random, ground) => {
      const { from, ...line } = drawnLine(random, ground);
      return { ...line, ...(spec.from === false ? {} : { from }), ...drawn(spec.numbers, random, ground) };
    },
    turn: (body, turning) => turnLine(body as OutsideBody, turning) as typeof body,
  }) as unknown as BodyShape<OutsideBody & BodyOf<F>>;
};
