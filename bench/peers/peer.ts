import type { Case } from "../puzzles.ts";

/** How many solutions were seen: two stand for two or more. */
export type Seen = 0 | 1 | 2;

/** What finds out whether a puzzle has no solution, one or several. */
export interface Peer {
  readonly name: string;
  /** Gets ready outside the measured time; undefined where it can't put the puzzle in its own words. */
  ready(puzzle: Case): Promise<Ready | undefined> | Ready | undefined;
}

export interface Ready {
  seen(): Promise<Seen> | Seen;
  /** Milliseconds of one judgement. */
  pass(): Promise<number> | number;
}
