import type { Board } from "../board/board.ts";
import { type Digits, isOne, none } from "../board/digits.ts";
import { finished } from "../finished.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Long } from "./long.ts";
import { type Demands, demandsOf, modelOf } from "./model.ts";
import { type Narrowing, narrowingOf } from "./narrowing.ts";
import { runOf } from "./run.ts";
import { drained } from "./solve.ts";

/** A cell and a digit in it that no solution seen so far has, or undefined. */
const unseen = ({ now }: Narrowing, seen: Int32Array): { cell: Cell; digit: number } | undefined => {
  const cell = now.findIndex((digits, k) => (digits & ~seen[k]!) !== 0);
  const open = cell < 0 ? 0 : now[cell]! & ~seen[cell]!;
  return cell < 0 ? undefined : { cell, digit: open & -open };
};

/** By `Cell`: the digits that it has in some solution; all empty when there is none. */
export function* findingPossibilities(board: Board, demands: Demands = demandsOf(board)): Long<Digits[]> {
  const narrowing = narrowingOf(modelOf(board, demands));
  const { now } = narrowing;
  const seen = new Int32Array(now.length);
  const prefer = (cell: Cell, digits: number): number => {
    const open = digits & ~seen[cell]! || digits;
    return open & -open;
  };
  if (!narrowing.settle()) return Array.from(seen, () => none);
  for (let next = unseen(narrowing, seen); next; next = unseen(narrowing, seen)) {
    const mark = narrowing.mark();
    narrowing.keep(next.cell, next.digit);
    const { solutions } = yield* drained(runOf(narrowing, prefer), 1);
    narrowing.undo(mark);
    for (const solution of solutions) for (const [cell, digit] of solution.entries()) seen[cell]! |= 1 << digit;
    if (solutions.length === 0 && !(narrowing.keep(next.cell, ~next.digit) && narrowing.settle())) break;
  }
  return Array.from(seen) as Digits[];
}

export const possibilities = (board: Board): Digits[] => finished(findingPossibilities(board));
/** The cells that are not the same in every solution. */
export const openCells = (board: Board): Cell[] =>
  possibilities(board).flatMap((digits, cell) => (isOne(digits) ? [] : [cell]));
