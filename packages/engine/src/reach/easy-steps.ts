import type { Board } from "../board/board.ts";
import { both, type Digits, isEmpty, isOne, listOf, min, none, only, without } from "../board/digits.ts";
import type { Knowledge } from "../board/knowledge.ts";
import { remembered } from "../board/remembered.ts";
import { clueUnits } from "../deduce/clue-units.ts";
import { leftBy, type Unit } from "../deduce/unit.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** More ways to meet one clue than this are not looked through by anyone in passing. */
const mostWays = 2_000;

const unitsByCell = remembered((board: Board): readonly (readonly Unit[])[] => {
  const byCell: Unit[][] = board.domains.map(() => []);
  for (const unit of clueUnits(board)) for (const cell of unit.cells) byCell[cell]!.push(unit);
  return byCell;
});

/** The state once each clue, looked at by itself, has taken out what it forbids; `changed`: the cells to look from. */
export const withCluesSeen = (knowledge: Knowledge, board: Board, changed: Iterable<Cell>): Knowledge => {
  const possible = [...knowledge.possible];
  const state = { ...knowledge, possible };
  const waiting = new Set<Unit>();
  const look = (cell: Cell): void => {
    for (const unit of unitsByCell(board)[cell]!) waiting.add(unit);
  };
  for (const cell of changed) look(cell);
  for (const unit of waiting) {
    waiting.delete(unit);
    const left = leftBy(unit, state, mostWays);
    for (const [k, cell] of left ? unit.cells.entries() : []) {
      const fewer = both(possible[cell]!, left![k]!);
      if (fewer === possible[cell]) continue;
      possible[cell] = fewer;
      look(cell);
    }
  }
  return state;
};

interface Places {
  readonly once: Digits;
  readonly nowhere: Digits;
}

/** Digits of a complete house that have one place left, or none. */
const placesIn = (cells: readonly Cell[], digits: Digits, possible: readonly Digits[]): Places => {
  let [any, more] = [none, none];
  for (const cell of cells) {
    more = (more | (any & possible[cell]!)) as Digits;
    any = (any | possible[cell]!) as Digits;
  }
  return { once: both(digits, without(any, more)), nowhere: without(digits, any) };
};

/**
 * The easy steps of the published measures: each cell that has one digit left, or is a digit's only place in a complete
 * house, with that digit.
 */
export const easySteps = ({ possible, settled }: Knowledge, board: Board): ReadonlyMap<Cell, number> => {
  const found = new Map<Cell, number>();
  for (const [cell, digits] of possible.entries()) if (!settled[cell] && isOne(digits)) found.set(cell, min(digits));
  for (const { cells, digits, complete } of board.houses) {
    if (!complete) continue;
    for (const digit of listOf(placesIn(cells, digits, possible).once)) {
      const cell = cells.find((other) => (possible[other]! & only(digit)) !== 0)!;
      if (!settled[cell] && !found.has(cell)) found.set(cell, digit);
    }
  }
  return found;
};

/** A cell or a digit of a complete house has nothing left. */
export const isContradicted = ({ possible }: Knowledge, board: Board): boolean =>
  possible.some(isEmpty) ||
  board.houses.some(({ cells, digits, complete }) => complete && !isEmpty(placesIn(cells, digits, possible).nowhere));
