import { startOf } from "../board/knowledge.ts";
import type { Burst } from "../deduce/chain.ts";
import { relayed } from "../relayed.ts";
import { anew } from "./anew.ts";
import { arranged } from "./arrange.ts";
import { type Hope, lookingAround, ordersOf, type Planning } from "./planner.ts";

/** The order with each step worked out anew in its place; undefined where something in it can't be proved. */
const workedOut = (order: readonly Burst[], { board, judge, pool }: Planning): Burst[] | undefined => {
  const bursts: Burst[] = [];
  let knowledge = startOf(board);
  for (const burst of order) {
    const made = anew(burst, knowledge, board, judge, pool.has);
    if (!made) return undefined;
    bursts.push(made.kept);
    knowledge = made.end;
  }
  return bursts;
};

const hopes: readonly Hope[] = ["as found", "as last cells", "all as last cells"];

/**
 * Whole orders to choose from: the best of a beam for each way to hope, to be held against each other by what they
 * really ask once they are in words, and the reasoning's own rearranged, which always holds.
 */
export function* candidatesOf(bursts: readonly Burst[], planning: Planning): Generator<number, Burst[][]> {
  const { board, judge } = planning;
  const look = lookingAround(planning);
  const made: Burst[][] = [];
  for (const [k, hope] of hopes.entries()) {
    const orders = yield* relayed(ordersOf(bursts, planning, hope, look), (share) => (k + share) / hopes.length);
    // A beam's orders differ little at its end, so that the first that can be proved stands for all.
    const whole = firstOf(orders, (order) => workedOut(order, planning));
    if (whole) made.push(whole);
  }
  return [...made, arranged(bursts, board, judge)];
}

const firstOf = <T, U>(all: readonly T[], make: (one: T) => U | undefined): U | undefined => {
  for (const one of all) {
    const made = make(one);
    if (made !== undefined) return made;
  }
  return undefined;
};
