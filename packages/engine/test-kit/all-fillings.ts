import type { Board } from "../src/board/board.ts";
import { only } from "../src/board/digits.ts";
import { checksOf, fillings } from "./enumerate.ts";

/** Every filling that solves the board, by `Cell`, found by plain enumeration and no part of the search. */
export const allFillings = (board: Board): (readonly number[])[] => {
  const domains = board.domains.map((digits, cell) => {
    const given = board.givens.get(cell);
    return given === undefined ? digits : only(given);
  });
  return [...fillings([...domains.keys()], domains, checksOf(board))];
};
