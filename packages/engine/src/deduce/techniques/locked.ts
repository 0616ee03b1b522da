import type { Board, House } from "../../board/board.ts";
import { type Digits, has, listOf, only } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import { remembered } from "../../board/remembered.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Technique } from "../deduction.ts";
import { addRemoval, gathering, removing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";
import { apartSets } from "./naked-set.ts";
import { placesIn } from "./only-place.ts";

const isOpen = (places: readonly Cell[], knowledge: Knowledge): boolean =>
  places.every((cell) => !isSettled(knowledge, cell));

/** The complete houses, and the other sets of cells apart that share two cells or more with each. */
const crossings = remembered((board: Board) =>
  board.houses
    .filter(({ complete }) => complete)
    .map((house) => ({
      house,
      sets: apartSets(board).filter(
        ({ cells, link }) => link.id !== house.id && cells.filter((cell) => house.cells.includes(cell)).length > 1,
      ),
    })),
);

/** All places of a digit in one house lie in another house or cage too: it is nowhere else there. */
export const locked: Technique = {
  name: "locked",
  level: 2,
  *find(knowledge, board) {
    for (const { house, sets } of crossings(board)) {
      for (const digit of listOf(house.digits)) {
        const places = placesIn(house, digit, knowledge);
        if (places.length < 2 || !isOpen(places, knowledge)) continue;
        for (const { cells, link } of sets) {
          if (!places.every((cell) => cells.includes(cell))) continue;
          const removes = new Map<Cell, Digits>();
          for (const cell of cells)
            if (!house.cells.includes(cell) && has(at(knowledge, cell), digit)) addRemoval(removes, cell, only(digit));
          if (removes.size === 0) continue;
          const because = gathering().house(house.id).link(link);
          gatherWhyNowhere(because, knowledge, board, outside(house, places), digit);
          yield removing("locked", 2, removes, because.reasons);
        }
      }
    }
  },
};

const outside = (house: House, places: readonly Cell[]): Cell[] => house.cells.filter((cell) => !places.includes(cell));
