import { digitsOf, isEmpty, listOf, without } from "../../board/digits.ts";
import { cornerCircle } from "../../marks/corner-circle.ts";
import type { Point } from "../../marks/shape.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { listed } from "../../speech/english/counts.ts";
import { blockAt } from "../block.ts";
import { type CornerDigitsBody, cornerDigits } from "../bodies/corner.ts";
import { canHold } from "../can-hold.ts";
import { cellsAt, digitsIn } from "../cells.ts";
import { type Bound, type Fault, faulty, type Kind, type Scope, type Setting } from "../contract.ts";
import { digitsText } from "../in-words.ts";

interface Quadruple extends Bound {
  /** Ascending, each as often as it must be there. */
  readonly digits: readonly number[];
  readonly corner: Point;
}

const timesIn = (digits: readonly number[], digit: number): number => digits.filter((other) => other === digit).length;

const atLeast = (cells: readonly Cell[], digit: number, times: number): Scope => ({
  cells,
  start: 0,
  next: (count, read) => (count as number) + (read === digit ? 1 : 0),
  ok: (count) => (count as number) >= times,
});

const unheld = (cells: readonly Cell[], digits: readonly number[], setting: Setting): Fault[] => {
  const known = digitsIn(setting, cells);
  const read = listed(digits);
  const strange = without(digitsOf(digits), known);
  if (!isEmpty(strange))
    return [
      {
        at: ["digits"],
        read,
        right: `digits that these cells can have: ${digitsText(known)}, so no ${listed(listOf(strange), "or")}`,
      },
    ];
  return canHold(cells, digits, setting)
    ? []
    : [{ at: ["digits"], read, right: "digits that these cells can hold together" }];
};

export const quadruple: Kind<CornerDigitsBody, Quadruple> = {
  name: "quadruple",
  body: cornerDigits,
  resolve: ({ at, digits }, setting) => {
    const places = blockAt(at, 2, setting);
    if ("faults" in places) return places;
    const cells = cellsAt(setting, places);
    const faults = unheld(cells, digits, setting);
    if (faults.length > 0) return faulty(...faults);
    return { cells, digits: [...digits].sort((a, b) => a - b), corner: [at.column, at.row] };
  },
  scopes: ({ cells, digits }) => [...new Set(digits)].map((digit) => atLeast(cells, digit, timesIn(digits, digit))),
  terms: ({ id, cells, digits }) => [{ term: "contains", owner: id, cells, digits }],
  marks: ({ digits, corner }) => cornerCircle(digits, corner),
  words: ({ cells, digits }) => ({
    rule: "The four cells around a circle hold every digit in it. A digit written twice is there at least twice.",
    title: "Corner circles",
    noun: "corner circle",
    plural: "corner circles",
    called: `corner circle with ${listed(digits)}`,
    at: cells,
    holds: `hold ${listed(digits)} between them`,
  }),
  alsoSaid: ["quad", "corner ... circle", "circle ... corner", "intersection"],
  relabels: "none",
};
