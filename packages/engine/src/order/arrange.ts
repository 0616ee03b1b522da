import type { Board } from "../board/board.ts";
import { startOf } from "../board/knowledge.ts";
import type { Burst } from "../deduce/chain.ts";
import { travel } from "../deduce/effort.ts";
import type { Judge } from "../deduce/judge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { anew } from "./anew.ts";
import { needsOf } from "./needs.ts";

/** A burst may be taken this many places early for the eye's sake before its turn weighs more. */
const patience = 0.12;

const placesOf = (burst: Burst): Cell[] => burst.flatMap(({ places }) => [...places.keys()]);

const nextOf = (
  waiting: ReadonlySet<number>,
  done: ReadonlySet<number>,
  needs: readonly ReadonlySet<number>[],
  bursts: readonly Burst[],
  eye: readonly Cell[],
  board: Board,
): number => {
  const ready = [...waiting].filter((index) => [...needs[index]!].every((need) => done.has(need)));
  const first = ready[0]!;
  const cost = (index: number): number => travel(board, eye, placesOf(bursts[index]!)) + patience * (index - first);
  return ready.reduce((best, index) => (cost(index) < cost(best) ? index : best));
};

/**
 * Moves the bursts, within what each needs, so that the talk stays in one place until it is worked out; each step is
 * worked out anew where it then stands.
 */
export const arranged = (bursts: readonly Burst[], board: Board, judge: Judge): Burst[] => {
  const needs = needsOf(bursts, board);
  const waiting = new Set(bursts.keys());
  const done = new Set<number>();
  const order: Burst[] = [];
  let knowledge = startOf(board);
  let eye: readonly Cell[] = [];
  while (waiting.size > 0) {
    const next = nextOf(waiting, done, needs, bursts, eye, board);
    waiting.delete(next);
    done.add(next);
    const { kept, end } = anew(bursts[next]!, knowledge, board, judge, () => true)!;
    order.push(kept);
    knowledge = end;
    eye = placesOf(kept);
  }
  return order;
};
