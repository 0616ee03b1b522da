import type { Board } from "../board/board.ts";
import { type Digits, listOf, without } from "../board/digits.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { clueUnits, domainsOfUnit } from "./clue-units.ts";
import type { Unit } from "./unit.ts";

/** What a clue by itself keeps out of other cells once one of its cells has some digit. */
export interface ClueBar {
  readonly rule: string;
  readonly cell: Cell;
  readonly digits: Digits;
}

/** Longer clues say little about one cell from another. */
const mostCells = 9;

const barsOfUnit = (board: Board, unit: Unit, into: Map<number, ClueBar[]>): void => {
  const [rule] = unit.rules as [string];
  const prober = unit.alone.prober(domainsOfUnit(board, unit));
  if (prober.isBroken) return;
  for (const [k, cell] of unit.cells.entries())
    for (const digit of listOf(prober.digits[k]!)) {
      const { broken, digits } = prober.probe(k, digit);
      if (broken) continue;
      const bars = unit.cells.flatMap((other, j): ClueBar[] => {
        const gone = without(prober.digits[j]!, digits[j]!);
        return j === k || gone === 0 ? [] : [{ rule, cell: other, digits: gone }];
      });
      if (bars.length > 0) into.set(cell * 32 + digit, [...(into.get(cell * 32 + digit) ?? []), ...bars]);
    }
};

/** By cell and digit (32 times the cell and the digit): what each clue, whatever else is known, then bars elsewhere. */
export const clueBars = remembered((board: Board): ReadonlyMap<number, readonly ClueBar[]> => {
  const bars = new Map<number, ClueBar[]>();
  for (const unit of clueUnits(board)) if (unit.cells.length <= mostCells) barsOfUnit(board, unit, bars);
  return bars;
});
