import { type Board, definitionOf, type Plan, type Prove, prove, runningOrder } from "@solvewright/engine";

/** The prover for a board, and how often it was asked. */
export const countedProver = (board: Board): { readonly prove: Prove; asked(): number } => {
  const about = definitionOf(board);
  let asked = 0;
  return {
    prove: (claim) => {
      asked++;
      return prove(claim, about);
    },
    asked: () => asked,
  };
};

export interface Timing {
  readonly plan: Plan;
  readonly proofs: number;
  readonly ms: number;
  /** Of each digit that was reached: the time since the one before. */
  readonly bursts: readonly number[];
}

/** A whole plan: reasons, proofs, order and words. */
export const planTimed = (board: Board): Timing => {
  const start = performance.now();
  const { prove, asked } = countedProver(board);
  const running = runningOrder(board, prove);
  const bursts: number[] = [];
  let [share, since] = [0, start];
  let next = running.next();
  while (!next.done) {
    if (next.value.stage === "reasoning" && next.value.share > share) {
      const now = performance.now();
      bursts.push(now - since);
      [share, since] = [next.value.share, now];
    }
    next = running.next();
  }
  return { plan: next.value.plan, proofs: asked(), ms: performance.now() - start, bursts };
};
