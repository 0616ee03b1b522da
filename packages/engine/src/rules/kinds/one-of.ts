import { both, digitsOf, listOf, without } from "../../board/digits.ts";
import { digitsUnderBar } from "../../marks/cell-marks.ts";
import { listed } from "../../speech/english/counts.ts";
import { type CellsDigitsBody, cellsDigits } from "../bodies/cells.ts";
import { type CellDigits, cellDigitsAt, eachAmong, eachAmongTerms, unfit } from "../cell-digits.ts";
import { digitsIn } from "../cells.ts";
import { faulty, type Kind } from "../contract.ts";
import { digitsText } from "../in-words.ts";

export const oneOf: Kind<CellsDigitsBody, CellDigits> = {
  name: "one-of",
  body: cellsDigits,
  resolve: ({ cells: places, digits: list }, setting) => {
    const cells = cellDigitsAt(places, digitsOf(list), setting);
    const known = digitsIn(setting, cells.cells);
    const strange = listOf(without(cells.digits, known)).map((digit) => ({
      at: ["digits", list.indexOf(digit)],
      read: String(digit),
      right: `a digit that these cells can have: ${digitsText(known)}`,
    }));
    const faults = strange.length > 0 ? strange : unfit(cells, listed(list, "or"), setting);
    return faults.length > 0 ? faulty(...faults) : { ...cells, digits: both(cells.digits, known) };
  },
  scopes: eachAmong,
  terms: eachAmongTerms,
  marks: ({ at, digits }) => at.flatMap((point) => digitsUnderBar(listOf(digits), point)),
  words: ({ cells, digits }) => {
    const choice = listed(listOf(digits), "or");
    return {
      rule: "A cell with small digits under a bar holds one of them.",
      title: "Listed digits",
      noun: "list of digits",
      plural: "lists of digits",
      called: `list of ${listed(listOf(digits))}`,
      at: cells,
      holds: cells.length === 1 ? `is ${choice}` : `are each ${choice}`,
    };
  },
  alsoSaid: ["one of", "either"],
  relabels: "none",
};
