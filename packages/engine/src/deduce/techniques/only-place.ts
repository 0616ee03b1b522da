import type { House } from "../../board/board.ts";
import { has, listOf } from "../../board/digits.ts";
import { at, isSettled } from "../../board/knowledge.ts";
import type { Technique } from "../deduction.ts";
import { gathering, placing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";

/** The cells of the house that can still hold the digit. */
export const placesIn = (house: House, digit: number, knowledge: Parameters<typeof at>[0]) =>
  house.cells.filter((cell) => has(at(knowledge, cell), digit));

/** The only cell of a complete house that can still hold a digit. */
export const onlyPlace: Technique = {
  name: "only-place",
  level: 1,
  *find(knowledge, board) {
    for (const house of board.houses) {
      if (!house.complete) continue;
      for (const digit of listOf(house.digits)) {
        const places = placesIn(house, digit, knowledge);
        const [cell] = places;
        if (places.length !== 1 || cell === undefined || isSettled(knowledge, cell)) continue;
        const because = gathering().house(house.id);
        const others = house.cells.filter((other) => other !== cell);
        gatherWhyNowhere(because, knowledge, board, others, digit);
        yield placing("only-place", 1, cell, digit, because.reasons);
      }
    }
  },
};
