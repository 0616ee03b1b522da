import type { Board } from "../board/board.ts";
import type { Long } from "../search/long.ts";
import type { Solution } from "../search/run.ts";
import { solving } from "../search/solve.ts";
import type { Soundness } from "../search/soundness.ts";

export type Verdict = Soundness["verdict"];

export interface Judged {
  readonly verdict: Verdict;
  /** Where there is exactly one. */
  readonly solution?: Solution;
}

/** The verdict without its reasons; undefined where so many nodes do not bring it. */
export function* verdictOn(board: Board, nodes = Number.POSITIVE_INFINITY): Long<Judged | undefined> {
  const { solutions, exhausted } = yield* solving(board, { limit: 2, nodes });
  if (solutions.length === 2) return { verdict: "several" };
  if (!exhausted) return undefined;
  const [solution] = solutions;
  return solution ? { verdict: "one", solution } : { verdict: "none" };
}
