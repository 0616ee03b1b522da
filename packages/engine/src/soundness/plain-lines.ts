import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { accept } from "../puzzle/accept.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { read } from "../puzzle/read.ts";
import { defaultBox } from "../puzzle/regions.ts";
import type { Fault } from "../rules/contract.ts";
import type { Long } from "../search/long.ts";
import { modelOf } from "../search/model.ts";
import { narrowingOf } from "../search/narrowing.ts";
import { runOf, type Solution } from "../search/run.ts";
import { drained } from "../search/solve.ts";
import type { Verdict } from "./verdict.ts";

/** The givens of one plain grid as a line of text has them. */
export interface PlainLine {
  readonly size: number;
  /** By `Cell`: the digit, 0 where nothing is given. */
  readonly digits: Uint8Array;
}

export interface LineVerdict {
  readonly verdict: Verdict;
  /** Up to two. */
  readonly solutions: readonly Solution[];
}

/** A digit is one character, so no grid is larger. */
const largest = 9;

const blank = /[.0_?]/;
const isDigit = (character: string, size: number): boolean => /[1-9]/.test(character) && Number(character) <= size;

/** A line of size x size characters, `.` or `0` where nothing is given, or what is wrong; `at` is the character, from 0. */
export const readPlainLine = (text: string): PlainLine | Fault => {
  const characters = [...text];
  const size = Math.sqrt(characters.length);
  if (!Number.isInteger(size) || size < 1 || size > largest)
    return { read: `${characters.length} characters`, right: "81 characters, or another square number up to there" };
  const wrong = characters.findIndex((character) => !blank.test(character) && !isDigit(character, size));
  if (wrong >= 0)
    return { at: [wrong], read: characters[wrong]!, right: `a digit, 1 to ${size}, or . where nothing is given` };
  const digits = Uint8Array.from(characters, (character) => (blank.test(character) ? 0 : Number(character)));
  return { size, digits };
};

/** The empty grid with the usual boxes, or without regions where its size has none. */
const emptyBoard = (size: number): Board => {
  const regions = defaultBox(size) ? "boxes" : "none";
  const text = `{ puzzle: 1, title: Plain, grids: [{ id: main, size: ${size}, regions: ${regions} }] }`;
  return compile(accept(read(text))!);
};

const verdicts = ["none", "one", "several"] as const;

/**
 * Judges plain grids of one size. Much quicker than compiling each: they all stand on one narrowing, which is taken back
 * after each. So one must be finished before the next is begun.
 */
export const lineJudge = (size: number): ((line: PlainLine) => Long<LineVerdict>) => {
  const narrowing = narrowingOf(modelOf(emptyBoard(size)));
  const give = (digits: Uint8Array): boolean => {
    const fits = digits.every((digit, cell: Cell) => digit === 0 || narrowing.keep(cell, 1 << digit));
    // Settled even where they clash: what waits to be told must not wait for the next line.
    return narrowing.settle() && fits;
  };
  return function* ({ digits }) {
    const mark = narrowing.mark();
    const run = give(digits) ? runOf(narrowing) : undefined;
    const solutions = run ? (yield* drained(run, 2)).solutions : [];
    run?.close();
    narrowing.undo(mark);
    return { verdict: verdicts[solutions.length]!, solutions };
  };
};
