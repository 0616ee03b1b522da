import type { Board } from "../../board/board.ts";
import type { Conclusion } from "../../deduce/deduction.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, aDigitOf, capital, listed } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

/** What a step says, without its reason, as a sentence in the placed style. */
export const conclusionSaid = (board: Board, { places, removes, spots, relates }: Conclusion): string => {
  const nouns = nounsFor(board, "placed");
  const cells = (all: readonly Cell[], join?: string): string => listed(all.map(nouns.cell), join);
  const said = [
    ...[...places].map(([cell, digit]) => `${nouns.cell(cell)} is ${aDigit(digit)}`),
    ...[...removes].map(([cell, digits]) => `${nouns.cell(cell)} isn't ${aDigitOf(digits)}`),
    ...spots.map((spot) => `the ${spot.digit} is in ${cells(spot.cells, "or")}`),
    ...relates.map((related) => `${cells(related.cells)} are tied together`),
  ];
  return `${capital(listed(said))}.`;
};
