import type { Digits } from "../../board/digits.ts";
import { evenSquare } from "../../marks/cell-marks.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { type CellDigits, cellDigitsAt, eachAmong, eachAmongTerms, unfit } from "../cell-digits.ts";
import { faulty, type Kind } from "../contract.ts";

const evenDigits = 0x55555555 as Digits;

export const even: Kind<SetBody, CellDigits> = {
  name: "even",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const cells = cellDigitsAt(places, evenDigits, setting);
    const faults = unfit(cells, "even", setting);
    return faults.length > 0 ? faulty(...faults) : cells;
  },
  scopes: eachAmong,
  terms: eachAmongTerms,
  marks: ({ at }) => at.map(evenSquare),
  words: ({ cells }) => ({
    rule: "A cell with a square drawn in it holds an even digit.",
    title: "Even cells",
    noun: cells.length === 1 ? "even cell" : "set of even cells",
    plural: cells.length === 1 ? "even cells" : "sets of even cells",
    at: cells,
    holds: cells.length === 1 ? "is even" : "are even",
  }),
  alsoSaid: ["even"],
  relabels: "none",
};
