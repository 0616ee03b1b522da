import { both, type Digits, has, isEmpty } from "../board/digits.ts";
import { centres } from "../marks/points.ts";
import type { Point } from "../marks/shape.ts";
import type { Place } from "../puzzle/canvas.ts";
import { nameOf } from "../puzzle/canvas.ts";
import { amongTerm } from "../terms/make.ts";
import type { Term } from "../terms/term.ts";
import { cellsAt } from "./cells.ts";
import type { Bound, Fault, Named, Scope, Setting } from "./contract.ts";
import { digitsText } from "./in-words.ts";

/** Cells each of which holds one of these digits, each for itself. */
export interface CellDigits extends Bound {
  readonly digits: Digits;
  readonly at: readonly Point[];
}

export const cellDigitsAt = (places: readonly Place[], digits: Digits, setting: Setting): CellDigits => ({
  cells: cellsAt(setting, places),
  digits,
  at: centres(places),
});

/** The cells that can hold none of the digits; `what` is what the others are: "even". */
export const unfit = ({ cells, digits }: CellDigits, what: string, { domains, canvas }: Setting): Fault[] =>
  cells
    .filter((cell) => isEmpty(both(domains[cell]!, digits)))
    .map((cell) => ({
      at: ["cells"],
      read: nameOf(canvas.places[cell]!),
      right: `a cell that can be ${what}; this one holds ${digitsText(domains[cell]!)}`,
    }));

export const eachAmong = ({ cells, digits }: CellDigits): Scope[] =>
  cells.map((cell) => ({ cells: [cell], holds: ([digit]) => has(digits, digit!) }));

export const eachAmongTerms = ({ id, cells, digits }: CellDigits & Named): Term[] =>
  cells.map((cell) => amongTerm(id, cell, digits));
