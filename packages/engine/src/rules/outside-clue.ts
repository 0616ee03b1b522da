import { crowded, type Stand } from "../marks/outside.ts";
import { cellAt } from "../puzzle/canvas.ts";
import type { OutsideBody } from "./bodies/outside.ts";
import type { Bound, Faulty, Setting } from "./contract.ts";
import { lineOf, type OutsideLine } from "./outside-line.ts";

/** A clue beside a row or a column. */
export interface OutsideClue extends Bound {
  readonly line: OutsideLine;
  readonly stand: Stand;
}

/** Where cells of another grid lie outside the line, the clue stands small at the edge, out of their digits' way. */
const standOf = (
  { places: [first], outsideAt, along: [x, y] }: OutsideLine,
  { canvas }: Pick<Setting, "canvas">,
): Stand => {
  const isOpen = cellAt(canvas, { row: first!.row - y, column: first!.column - x }) === undefined;
  if (isOpen) return { at: outsideAt, along: [x, y], scale: 1 };
  const [inward, aside] = [0.15, 0.33];
  const at = [
    outsideAt[0] + inward * x - aside * Math.abs(y),
    outsideAt[1] + inward * y - aside * Math.abs(x),
  ] as const;
  return { at, along: [x, y], scale: crowded };
};

/** The clue's line and where it stands, or why there is no such line. */
export const outsideClue = (body: OutsideBody, setting: Setting): OutsideClue | Faulty => {
  const line = lineOf(body, setting);
  return "faults" in line ? line : { cells: line.cells, line, stand: standOf(line, setting) };
};

/** "row 3", or "row 3 of the north grid" where there are several grids. */
export const lineSaid = ({ axis, number, grid }: OutsideLine, { grids }: Pick<Setting, "grids">): string =>
  `${axis} ${number}${grids.length > 1 ? ` of ${grid.called}` : ""}`;
