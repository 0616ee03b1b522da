import type { House } from "../../board/board.ts";
import { both, type Digits, either, has, listOf, none, without } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Technique } from "../deduction.ts";
import { gathering, placing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";

/** The cells of the house that can still hold the digit. */
export const placesIn = (house: House, digit: number, knowledge: Knowledge) =>
  house.cells.filter((cell) => has(at(knowledge, cell), digit));

/** The digits that one cell of the house alone can still hold. */
const onceIn = (house: House, knowledge: Knowledge): Digits => {
  let [some, more] = [none, none];
  for (const cell of house.cells) {
    more = either(more, both(some, at(knowledge, cell)));
    some = either(some, at(knowledge, cell));
  }
  return without(some, more);
};

/** The only cell of a complete house that can still hold a digit. */
export const onlyPlace: Technique = {
  name: "only-place",
  level: 1,
  *find(knowledge, board) {
    for (const house of board.houses) {
      if (!house.complete) continue;
      for (const digit of listOf(both(house.digits, onceIn(house, knowledge)))) {
        const cell = house.cells.find((each) => has(at(knowledge, each), digit))!;
        if (isSettled(knowledge, cell)) continue;
        const because = gathering().house(house.id);
        const others = house.cells.filter((other) => other !== cell);
        gatherWhyNowhere(because, knowledge, board, others, digit);
        yield placing("only-place", 1, cell, digit, because.reasons);
      }
    }
  },
};
