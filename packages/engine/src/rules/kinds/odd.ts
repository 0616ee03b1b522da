import type { Digits } from "../../board/digits.ts";
import { oddDisc } from "../../marks/cell-marks.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { type CellDigits, cellDigitsAt, eachAmong, eachAmongTerms, unfit } from "../cell-digits.ts";
import { faulty, type Kind } from "../contract.ts";

const oddDigits = 0xaaaaaaaa as Digits;

export const odd: Kind<SetBody, CellDigits> = {
  name: "odd",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const cells = cellDigitsAt(places, oddDigits, setting);
    const faults = unfit(cells, "odd", setting);
    return faults.length > 0 ? faulty(...faults) : cells;
  },
  scopes: eachAmong,
  terms: eachAmongTerms,
  marks: ({ at }) => at.map(oddDisc),
  words: ({ cells }) => ({
    rule: "A cell with a disc drawn in it holds an odd digit.",
    title: "Odd cells",
    noun: cells.length === 1 ? "odd cell" : "set of odd cells",
    plural: cells.length === 1 ? "odd cells" : "sets of odd cells",
    at: cells,
    holds: cells.length === 1 ? "is odd" : "are odd",
  }),
  alsoSaid: ["odd"],
  relabels: "none",
};
