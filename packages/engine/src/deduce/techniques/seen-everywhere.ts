import type { Board, House } from "../../board/board.ts";
import { has, listOf, only } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import { linksBetween } from "../../board/links.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Technique } from "../deduction.ts";
import { gathering, removing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";
import { placesIn } from "./only-place.ts";

const mostPlaces = 4;

/** Cells outside the house that see all of these places and could still hold the digit. */
const seenFromAll = (
  places: readonly Cell[],
  house: House,
  digit: number,
  knowledge: Knowledge,
  board: Board,
): Cell[] =>
  board.sees[places[0]!]!.filter(
    (cell) =>
      has(at(knowledge, cell), digit) &&
      !house.cells.includes(cell) &&
      places.every((place) => linksBetween(board, place, cell).length > 0),
  );

/** Wherever in this house the digit stands, it bars this cell. Where one other house does it, that is locked. */
export const seenEverywhere: Technique = {
  name: "seen-everywhere",
  level: 3,
  *find(knowledge, board) {
    for (const house of board.houses) {
      if (!house.complete) continue;
      for (const digit of listOf(house.digits)) {
        const places = placesIn(house, digit, knowledge);
        if (places.length < 2 || places.length > mostPlaces || places.some((cell) => isSettled(knowledge, cell)))
          continue;
        for (const cell of seenFromAll(places, house, digit, knowledge, board)) {
          const because = gathering().house(house.id);
          gatherWhyNowhere(
            because,
            knowledge,
            board,
            house.cells.filter((other) => !places.includes(other)),
            digit,
          );
          for (const place of places) because.link(linksBetween(board, place, cell)[0]!);
          yield removing("seen-everywhere", 3, new Map([[cell, only(digit)]]), because.reasons);
        }
      }
    }
  },
};
