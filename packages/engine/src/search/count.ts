import type { Board } from "../board/board.ts";
import { finished } from "../finished.ts";
import { type Long, stride } from "./long.ts";
import { modelOf } from "./model.ts";
import { narrowingOf } from "./narrowing.ts";
import { runOf } from "./run.ts";

export interface Count {
  /** Up to the bound. */
  readonly count: number;
  /** There are no others. */
  readonly exact: boolean;
}

/** As `count`, in pieces. */
export function* counting(board: Board, bound: number): Long<Count> {
  const run = runOf(narrowingOf(modelOf(board)));
  let count = 0;
  let asked = 0;
  while (count < bound) {
    const outcome = run.next(stride);
    if (outcome === "exhausted") return { count, exact: true };
    if (outcome === "solution") count++;
    if (run.nodes() - asked < stride) continue;
    asked = run.nodes();
    yield { nodes: asked, found: count };
  }
  return { count, exact: false };
}

/** How many solutions the board has; it stops counting at the bound. */
export const count = (board: Board, bound: number): Count => finished(counting(board, bound));
