import { listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { State } from "../terms/term.ts";
import type { Setting } from "./contract.ts";
import { innerOf } from "./line.ts";

/** What the two ends may be, and what may lie between them. */
export interface EndsRule {
  readonly ends: (first: number, last: number) => boolean;
  readonly between: (digit: number, first: number, last: number) => boolean;
}

/** Whether some digits of the cells do. */
export const canMeetEnds = (cells: readonly Cell[], { ends, between }: EndsRule, { domains }: Setting): boolean => {
  const [firsts, lasts] = [cells[0]!, cells.at(-1)!].map((cell) => listOf(domains[cell]!));
  const inner = [...new Set(innerOf(cells).map((cell) => domains[cell]!))];
  return firsts!.some((first) =>
    lasts!.some(
      (last) =>
        ends(first, last) && inner.every((digits) => listOf(digits).some((digit) => between(digit, first, last))),
    ),
  );
};

/** The two ends, then what lies between them, read as one; the ends stay in the state as 32 times the first, and the last. */
export const readingEndsFirst = (cells: readonly Cell[], { ends, between }: EndsRule) => ({
  cells: [cells[0]!, cells.at(-1)!, ...innerOf(cells)],
  start: -1 as State,
  next: (state: State, digit: number, index: number): State | undefined => {
    const read = state as number;
    if (index === 0) return digit;
    if (index === 1) return ends(read, digit) ? 32 * read + digit : undefined;
    return between(digit, read >> 5, read & 31) ? read : undefined;
  },
  ok: () => true,
});
