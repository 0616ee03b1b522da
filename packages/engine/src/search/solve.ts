import type { Board } from "../board/board.ts";
import { finished } from "../finished.ts";
import { type Long, stride } from "./long.ts";
import { type Demands, demandsOf, modelOf } from "./model.ts";
import { narrowingOf } from "./narrowing.ts";
import { type Run, runOf, type Solution } from "./run.ts";

export interface SolveOptions {
  /** So many solutions are enough. */
  readonly limit: number;
  /** Gives up after so many nodes. */
  readonly nodes?: number;
  /** Only these; all that the board has where left out. */
  readonly demands?: Demands;
}

export interface Solved {
  readonly solutions: readonly Solution[];
  /** There are no others. */
  readonly exhausted: boolean;
  readonly nodes: number;
}

/** The solutions below the run's present state. */
export function* drained(run: Run, limit: number, nodes = Number.POSITIVE_INFINITY): Long<Solved> {
  const solutions: Solution[] = [];
  const solved = (exhausted: boolean): Solved => ({ solutions, exhausted, nodes: run.nodes() });
  while (solutions.length < limit) {
    const outcome = run.next(Math.min(stride, nodes - run.nodes()));
    if (outcome === "exhausted") return solved(true);
    if (outcome === "solution") solutions.push(run.solution());
    else if (run.nodes() >= nodes) return solved(false);
    else yield { nodes: run.nodes(), found: solutions.length };
  }
  return solved(false);
}

/** As `solve`, in pieces. */
export const solving = (board: Board, { limit, nodes, demands = demandsOf(board) }: SolveOptions): Long<Solved> =>
  drained(runOf(narrowingOf(modelOf(board, demands))), limit, nodes);

/** Up to `limit` solutions of the board. */
export const solve = (board: Board, options: SolveOptions): Solved => finished(solving(board, options));
