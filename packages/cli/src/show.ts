import {
  type Board,
  definitionOf,
  judging,
  limitsOf,
  type Plan,
  type PlanOptions,
  type Prove,
  prove,
  runningOrder,
  type Soundness,
} from "@solvewright/engine";
import type { Asked } from "./command.ts";
import { carriedOut, watching } from "./long-work.ts";

/** Throws `Stopped` once the user asks to stop. */
export const soundnessOf = (board: Board, asked: Asked): Soundness =>
  carriedOut(judging(board), asked, ({ nodes }) =>
    asked.out.progress("Looking for solutions", `${nodes} places looked at`),
  );

/** The prover, which calls `watch` first: long reasoning asks it again and again. */
export const watchedProver = (board: Board, watch: () => void): Prove => {
  const about = definitionOf(board);
  return (claim) => {
    watch();
    return prove(claim, about);
  };
};

const stages = { reasoning: "Reasoning", ordering: "Putting it in order", words: "Finding words" };

/** The running order of a board with one solution. Throws `Stopped` like `soundnessOf`. */
export const planOf = (
  board: Board,
  asked: Asked,
  options: Pick<PlanOptions, "level" | "wishes" | "met"> = {},
): Plan => {
  const about = definitionOf(board);
  const work = runningOrder(board, watchedProver(board, watching(asked)), {
    ...options,
    limits: (deduction) => limitsOf(board, about, deduction),
  });
  return carriedOut(work, asked, ({ stage, share }) =>
    asked.out.progress(stages[stage], share > 0 ? `${Math.round(share * 100)} %` : undefined),
  ).plan;
};
