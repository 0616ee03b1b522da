import type { Board } from "../board/board.ts";
import { finished } from "../finished.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Long } from "./long.ts";
import { type Demands, demandsOf, modelOf } from "./model.ts";
import { type Narrowing, narrowingOf } from "./narrowing.ts";
import { runOf, type Solution } from "./run.ts";
import { drained } from "./solve.ts";

export interface Soundness {
  readonly verdict: "one" | "several" | "none";
  /** Up to two. */
  readonly solutions: readonly Solution[];
  /** The cells in which the two shown differ. */
  readonly differ: readonly Cell[];
  readonly nodes: number;
}

const mostNodesToBringNear = 2000;

const differing = (one: Solution, other: Solution): Cell[] =>
  [...one.keys()].filter((cell) => one[cell] !== other[cell]);

/** Another solution than `one` that agrees with it in all these cells, if a short search finds one. */
const otherAgreeing = (narrowing: Narrowing, one: Solution, cells: Iterable<Cell>): Solution | undefined => {
  const mark = narrowing.mark();
  for (const cell of cells)
    if (!narrowing.keep(cell, 1 << one[cell]!)) throw new Error("a solution is outside its domains");
  const { solutions } = finished(drained(runOf(narrowing), 2, mostNodesToBringNear));
  narrowing.undo(mark);
  return solutions.find((solution) => differing(solution, one).length > 0);
};

/** Two solutions that differ in so few cells that none of these can be made to agree by itself. */
const broughtNear = (narrowing: Narrowing, one: Solution, other: Solution): Solution => {
  let near = other;
  for (const cell of differing(one, other)) {
    const differ = new Set(differing(one, near));
    if (!differ.delete(cell)) continue;
    near =
      otherAgreeing(
        narrowing,
        one,
        [...one.keys()].filter((k) => !differ.has(k)),
      ) ?? near;
  }
  return near;
};

/** Whether the board has one solution, several or none. */
export function* judging(board: Board, demands: Demands = demandsOf(board)): Long<Soundness> {
  const narrowing = narrowingOf(modelOf(board, demands));
  const run = runOf(narrowing);
  const { solutions, nodes } = yield* drained(run, 2);
  const [one, other] = solutions;
  if (!one) return { verdict: "none", solutions, differ: [], nodes };
  if (!other) return { verdict: "one", solutions, differ: [], nodes };
  run.close();
  const near = broughtNear(narrowing, one, other);
  return { verdict: "several", solutions: [one, near], differ: differing(one, near), nodes };
}

export const soundness = (board: Board): Soundness => finished(judging(board));
