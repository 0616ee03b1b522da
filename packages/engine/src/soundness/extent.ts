import type { Board } from "../board/board.ts";
import { isOne } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Count, counting } from "../search/count.ts";
import type { Long } from "../search/long.ts";
import { findingPossibilities } from "../search/possibilities.ts";

/** How many solutions a board has, and where they differ. */
export interface Extent extends Count {
  /** The cells that are not the same in every solution; none where there is no solution. */
  readonly open: readonly Cell[];
}

/** Solutions are counted up to the bound; `open` is of all of them. */
export function* measuringExtent(board: Board, bound: number): Long<Extent> {
  const many = yield* counting(board, bound);
  if (many.count === 0) return { ...many, open: [] };
  const possible = yield* findingPossibilities(board);
  return { ...many, open: possible.flatMap((digits, cell) => (isOne(digits) ? [] : [cell])) };
}
