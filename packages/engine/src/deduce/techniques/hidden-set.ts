import type { Board, House } from "../../board/board.ts";
import { type Digits, digitsOf, listOf, without } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { combinations } from "../combinations.ts";
import type { Deduction, Technique } from "../deduction.ts";
import { addRemoval, gathering, removing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";
import { placesIn } from "./only-place.ts";

const unplaced = (house: House, knowledge: Knowledge): number[] =>
  listOf(house.digits).filter(
    (digit) => !house.cells.some((cell) => isSettled(knowledge, cell) && at(knowledge, cell) === digitsOf([digit])),
  );

function* hiddenSets(
  size: number,
  name: string,
  level: number,
  knowledge: Knowledge,
  board: Board,
): Iterable<Deduction> {
  for (const house of board.houses) {
    if (!house.complete) continue;
    const places = new Map(unplaced(house, knowledge).map((digit) => [digit, placesIn(house, digit, knowledge)]));
    const few = [...places].filter(([, cells]) => cells.length <= size && cells.length > 1).map(([digit]) => digit);
    for (const set of combinations(few, size)) {
      const cells = [...new Set(set.flatMap((digit) => places.get(digit)!))];
      if (cells.length !== size) continue;
      const removes = new Map<Cell, Digits>();
      for (const cell of cells) addRemoval(removes, cell, without(at(knowledge, cell), digitsOf(set)));
      if (removes.size === 0) continue;
      const because = gathering().house(house.id);
      const others = house.cells.filter((cell) => !cells.includes(cell));
      for (const digit of set) gatherWhyNowhere(because, knowledge, board, others, digit);
      yield removing(name, level, removes, because.reasons);
    }
  }
}

const hidden = (size: number, name: string, level: number): Technique => ({
  name,
  level,
  find: (knowledge, board) => hiddenSets(size, name, level, knowledge, board),
});

/** As many digits as cells that can hold them in a house: those cells hold nothing else. */
export const hiddenPair = hidden(2, "hidden-pair", 2);
export const hiddenTriple = hidden(3, "hidden-triple", 3);
