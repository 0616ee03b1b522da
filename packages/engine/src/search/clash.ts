import type { Board } from "../board/board.ts";
import { finished } from "../finished.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Long } from "./long.ts";
import { type Demands, demandsOf, modelOf } from "./model.ts";
import { narrowingOf } from "./narrowing.ts";
import { runOf } from "./run.ts";
import { drained } from "./solve.ts";

/** Demands that can't be met together, though any of them dropped leaves some that can. */
export interface Clash {
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  readonly givens: readonly Cell[];
  /** False where a trial was given up, so that something may be dropped still. */
  readonly minimal: boolean;
}

type Demand =
  | { readonly house: Demands["houses"][number] }
  | { readonly rule: Demands["rules"][number] }
  | { readonly given: readonly [Cell, number] };

const mostNodes = 3000;

const listed = ({ houses, rules, givens }: Demands): Demand[] => [
  ...houses.map((house) => ({ house })),
  ...rules.map((rule) => ({ rule })),
  ...[...givens].map((given) => ({ given })),
];
const together = (demands: readonly Demand[]): Demands => ({
  houses: demands.flatMap((demand) => ("house" in demand ? [demand.house] : [])),
  rules: demands.flatMap((demand) => ("rule" in demand ? [demand.rule] : [])),
  givens: new Map(demands.flatMap((demand) => ("given" in demand ? [demand.given] : []))),
});

type Trial = "clash" | "fine" | "too long";

function* trying(board: Board, demands: readonly Demand[], nodes: number): Long<Trial> {
  const run = runOf(narrowingOf(modelOf(board, together(demands))));
  const { solutions, exhausted } = yield* drained(run, 1, nodes);
  if (solutions.length > 0) return "fine";
  return exhausted ? "clash" : "too long";
}

interface Shrunk {
  readonly demands: readonly Demand[];
  readonly minimal: boolean;
}

/** Drops what it can in this order, first many at once, then fewer, then one by one. */
function* shrinking(board: Board, order: readonly Demand[], nodes: number): Long<Shrunk> {
  let kept = order;
  let minimal = true;
  for (let size = order.length >> 1; size >= 1; size >>= 1)
    for (const [k] of order.entries()) {
      if (k % size !== 0) continue;
      const chunk = new Set(order.slice(k, k + size).filter((demand) => kept.includes(demand)));
      if (chunk.size === 0) continue;
      const rest = kept.filter((demand) => !chunk.has(demand));
      const trial = yield* trying(board, rest, nodes);
      if (trial === "clash") kept = rest;
      else if (trial === "too long" && size === 1) minimal = false;
    }
  return { demands: kept, minimal };
}

/** The orders in which to drop: what is dropped last tends to be kept. */
const ordersOf = (demands: Demands): Demand[][] => {
  const { houses, rules, givens } = demands;
  const all = listed(demands);
  const givensLast = all;
  const rulesLast = listed({ houses, rules: [], givens }).concat(listed({ houses: [], rules, givens: new Map() }));
  const housesLast = listed({ houses: [], rules, givens }).concat(listed({ houses, rules: [], givens: new Map() }));
  return [givensLast, rulesLast, housesLast, [...givensLast].reverse(), [...housesLast].reverse()];
};

/** A smallest clash among those that a few orders of dropping lead to; the board has no solution. */
export function* findingClash(board: Board): Long<Clash> {
  let best: Shrunk | undefined;
  for (const order of ordersOf(demandsOf(board))) {
    const found = yield* shrinking(board, order, mostNodes);
    if (!best || found.demands.length < best.demands.length) best = found;
  }
  const { houses, rules, givens } = together(best!.demands);
  return {
    houses: houses.map(({ id }) => id),
    rules: rules.map(({ id }) => id),
    givens: [...givens.keys()],
    minimal: best!.minimal,
  };
}

export const clash = (board: Board): Clash => finished(findingClash(board));
