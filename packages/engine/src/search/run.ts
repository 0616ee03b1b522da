import { count, type Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Narrowing } from "./narrowing.ts";

export type Outcome = "solution" | "exhausted" | "budget";

/** By `Cell`: the digit. */
export type Solution = Uint8Array;

/** A search that goes on where it stopped. */
export interface Run {
  /** To the next solution (none comes twice), to the end, or until so many more nodes are spent. */
  next(nodes: number): Outcome;
  solution(): Solution;
  nodes(): number;
  /** Takes the narrowing back to where the run began to branch. */
  close(): void;
}

/** Of several digits the one to try first, as a set of one. */
export type Prefer = (cell: Cell, digits: number) => number;

const least: Prefer = (_, digits) => digits & -digits;
const firstLeash = 200;

/** The open cell with the fewest digits for its weight. */
const openCell = ({ now, weights, open, openCount }: Narrowing): Cell => {
  const end = openCount();
  let best = -1;
  let fewest = Number.POSITIVE_INFINITY;
  for (let k = 0; k < end; k++) {
    const cell = open[k]!;
    const score = count(now[cell] as Digits) / weights[cell]!;
    if (score < fewest) {
      fewest = score;
      best = cell;
    }
  }
  return best;
};

const solutionIn = (now: Int32Array): Solution => {
  const solution = new Uint8Array(now.length);
  for (let cell = 0; cell < now.length; cell++) solution[cell] = 31 - Math.clz32(now[cell]!);
  return solution;
};
const isAt = (solution: Solution, now: Int32Array): boolean =>
  solution.every((digit, cell) => now[cell] === 1 << digit);

/**
 * Searches below the narrowing's present state. While it has found less than two solutions it begins anew whenever its
 * leash runs out, each time with a longer one, since what has failed by then shows where to look first.
 */
export const runOf = (narrowing: Narrowing, prefer: Prefer = least): Run => {
  const { now } = narrowing;
  const marks: number[] = [];
  const cells: Cell[] = [];
  const digits: number[] = [];
  let first: Solution | undefined;
  /** The first solution was found before the last restart, and so will come again. */
  let again = false;
  let found = 0;
  let nodes = 0;
  let leash = firstLeash;
  let restartAt = leash;
  let holds = narrowing.settle();
  const base = narrowing.mark();

  const assume = (cell: Cell): void => {
    const digit = prefer(cell, now[cell]!);
    marks.push(narrowing.mark());
    cells.push(cell);
    digits.push(digit);
    nodes++;
    holds = narrowing.keep(cell, digit) && narrowing.settle();
  };
  const retreat = (): void => {
    narrowing.undo(marks.pop()!);
    holds = narrowing.keep(cells.pop()!, ~digits.pop()!) && narrowing.settle();
  };
  const restart = (): void => {
    leash *= 2;
    restartAt = nodes + leash;
    again = first !== undefined;
    if (marks.length === 0) return;
    narrowing.undo(marks[0]!);
    marks.length = cells.length = digits.length = 0;
    holds = narrowing.settle();
  };
  const isNew = (): boolean => {
    if (again && first && isAt(first, now)) {
      again = false;
      return false;
    }
    first ??= solutionIn(now);
    found++;
    return true;
  };
  const next = (budget: number): Outcome => {
    const end = nodes + budget;
    for (;;) {
      if (!holds) {
        if (marks.length === 0) return "exhausted";
        retreat();
      } else if (nodes >= end) return "budget";
      else if (nodes >= restartAt && found < 2) restart();
      else if (narrowing.openCount() > 0) assume(openCell(narrowing));
      else {
        holds = false;
        if (isNew()) return "solution";
      }
    }
  };
  const close = (): void => {
    narrowing.undo(base);
    marks.length = 0;
    holds = false;
  };
  return { next, solution: () => solutionIn(now), nodes: () => nodes, close };
};
