import type { Board } from "../src/board/board.ts";
import { type Chain, type ChainOptions, chainOf } from "../src/deduce/chain.ts";
import { finished } from "../src/finished.ts";
import { type Planned, type PlanOptions, runningOrder } from "../src/order/run.ts";
import { definitionOf } from "../src/prove/definition.ts";
import { prove } from "../src/prove/prove.ts";

/** The whole chain of steps, each proved by the prover. */
export const chained = (board: Board, options: ChainOptions = {}): Chain => {
  const about = definitionOf(board);
  return finished(chainOf(board, (claim) => prove(claim, about), options));
};

/** The whole running order, each step proved by the prover. */
export const planned = (board: Board, options: PlanOptions = {}): Planned => {
  const about = definitionOf(board);
  return finished(runningOrder(board, (claim) => prove(claim, about), options));
};
