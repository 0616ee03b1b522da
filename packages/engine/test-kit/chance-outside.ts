import type { Filled } from "./kind-cases.ts";
import type { Random } from "./random.ts";

/** A row or column of a filled board as an outside clue names it, and its digits as seen from that side. */
export interface FilledLine {
  readonly line: { readonly row: number } | { readonly column: number };
  readonly from: { readonly from: "left" | "right" | "top" | "bottom" };
  readonly digits: readonly number[];
}

export const lineFrom = (random: Random, board: Filled): FilledLine => {
  const number = 1 + random.below(board.size);
  const isRow = random.below(2) === 0;
  const isBack = random.below(2) === 0;
  const along = Array.from({ length: board.size }, (_, k) => (isBack ? board.size - k : k + 1));
  return {
    line: isRow ? { row: number } : { column: number },
    from: { from: isRow ? (isBack ? "right" : "left") : isBack ? "bottom" : "top" },
    digits: along.map((place) => (isRow ? board.digit(number, place) : board.digit(place, number))),
  };
};

export const sumOf = (digits: readonly number[]): number => digits.reduce((sum, digit) => sum + digit, 0);
