import type { Board } from "../../board/board.ts";
import { type Digits, has, isEmpty, listOf, without } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { clueUnits } from "../clue-units.ts";
import type { Technique } from "../deduction.ts";
import { gathering, placing } from "../reasons.ts";
import { leftBy, reasonsOf, type Unit } from "../unit.ts";
import { gatherWhyNowhere } from "../why-not.ts";
import { placesIn } from "./only-place.ts";

/** By cell, the clues that bar digits there as things stand. */
const barredByClues = (knowledge: Knowledge, board: Board): Map<Cell, { unit: Unit; gone: Digits }[]> => {
  const barred = new Map<Cell, { unit: Unit; gone: Digits }[]>();
  for (const unit of clueUnits(board)) {
    const left = leftBy(unit, knowledge);
    if (!left || left.some(isEmpty)) continue;
    for (const [k, cell] of unit.cells.entries()) {
      const gone = without(at(knowledge, cell), left[k]!);
      if (!isEmpty(gone)) barred.set(cell, [...(barred.get(cell) ?? []), { unit, gone }]);
    }
  }
  return barred;
};

/** The only place for a digit in a house, where each of some other places is barred by one clue. */
export const onlyPlaceByClues: Technique = {
  name: "only-place-by-clues",
  level: 2,
  fits: ({ rules }) => rules.length > 0,
  *find(knowledge, board) {
    const barred = barredByClues(knowledge, board);
    if (barred.size === 0) return;
    const barring = (cell: Cell, digit: number): Unit | undefined =>
      barred.get(cell)?.find(({ gone }) => has(gone, digit))?.unit;
    for (const house of board.houses) {
      if (!house.complete) continue;
      for (const digit of listOf(house.digits)) {
        const places = placesIn(house, digit, knowledge);
        const free = places.filter((cell) => !barring(cell, digit));
        const [cell] = free;
        if (free.length !== 1 || cell === undefined || places.length === 1 || isSettled(knowledge, cell)) continue;
        const because = gathering().house(house.id);
        gatherWhyNowhere(
          because,
          knowledge,
          board,
          house.cells.filter((other) => !places.includes(other)),
          digit,
        );
        for (const other of places)
          if (other !== cell) because.all(reasonsOf(barring(other, digit)!, knowledge, board));
        yield placing("only-place-by-clues", 2, cell, digit, because.reasons);
      }
    }
  },
};
