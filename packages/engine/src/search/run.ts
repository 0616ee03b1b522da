import { count, type Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Model } from "./model.ts";
import { type Narrowing, narrowingOf } from "./narrowing.ts";

export type Outcome = "solution" | "exhausted" | "budget";

/** A search that goes on where it stopped. */
export interface Run {
  /** To the next solution, to the end, or until so many more nodes are spent. */
  next(nodes: number): Outcome;
  readonly now: Int32Array;
  nodes(): number;
}

/** The cell with the fewest digits for its weight; -1 when all are settled. */
const leastCell = ({ now, weights }: Narrowing): Cell => {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let cell = 0; cell < now.length; cell++) {
    const digits = now[cell]!;
    if ((digits & (digits - 1)) === 0) continue;
    const score = count(digits as Digits) / weights[cell]!;
    if (score < least) {
      least = score;
      best = cell;
    }
  }
  return best;
};

export const runOf = (model: Model): Run => {
  const narrowing = narrowingOf(model);
  const { now } = narrowing;
  const marks: number[] = [];
  const cells: number[] = [];
  const digits: number[] = [];
  let nodes = 0;
  let holds = now.every((set) => set !== 0) && narrowing.settle();

  const assume = (): boolean => {
    const cell = leastCell(narrowing);
    if (cell < 0) return false;
    const digit = now[cell]! & -now[cell]!;
    marks.push(narrowing.mark());
    cells.push(cell);
    digits.push(digit);
    nodes++;
    holds = narrowing.keep(cell, digit) && narrowing.settle();
    return true;
  };
  const retreat = (): boolean => {
    if (marks.length === 0) return false;
    narrowing.undo(marks.pop()!);
    holds = narrowing.keep(cells.pop()!, ~digits.pop()!) && narrowing.settle();
    return true;
  };
  const next = (budget: number): Outcome => {
    const end = nodes + budget;
    for (;;) {
      if (nodes >= end) return "budget";
      if (!holds) {
        if (!retreat()) return "exhausted";
      } else if (!assume()) {
        holds = false;
        return "solution";
      }
    }
  };
  return { next, now, nodes: () => nodes };
};
