import type { Cell } from "../puzzle/canvas.ts";
import type { State } from "../terms/term.ts";
import { innerOf } from "./line.ts";

/** What the two ends may be, and what may lie between them. */
export interface EndsRule {
  readonly ends: (first: number, last: number) => boolean;
  readonly between: (digit: number, first: number, last: number) => boolean;
}

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
