import type { Board } from "../board/board.ts";
import { type Knowledge, withPlaced } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { claimOf } from "../deduce/claim.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Step } from "../deduce/step.ts";
import { textOf, wordsIn } from "../speech/line.ts";
import { phrase } from "../speech/phrase.ts";
import { type Pace, speaking, tenths } from "./pace.ts";

/** With what single steps are told. */
export interface StepTelling {
  readonly board: Board;
  readonly pace: Pace;
  /** The cells whose grids' lack of digits a claim needs. */
  readonly limits: (deduction: Deduction) => readonly string[];
}

/** The sub-steps of a what-if with their numbers, lines and times; each is said in the state that those before it leave. */
const subStepsOf = (
  telling: StepTelling,
  { assume, steps = [] }: Deduction,
  before: Knowledge,
  prefix: string,
): Step[] => {
  let state = assume ? withPlaced(before, telling.board, [assume]) : before;
  return steps.map((step, k) => {
    const made = toldStep(telling, step, state, `${prefix}.${k + 1}`);
    state = after(state, telling.board, step);
    return made;
  });
};

/** A step as the outside sees it, said in the state just before it. */
export const toldStep = (telling: StepTelling, deduction: Deduction, before: Knowledge, n: number | string): Step => {
  const { board, pace, limits } = telling;
  const claim = claimOf(board, deduction);
  const say = textOf(phrase(deduction, before, board, "pointing"));
  return {
    n,
    technique: deduction.technique,
    level: deduction.level,
    ...claim,
    ...(claim.steps ? { steps: subStepsOf(telling, deduction, before, `${n}`) } : {}),
    because: { ...claim.because, limits: limits(deduction) },
    say,
    seconds: tenths(speaking(wordsIn(say), pace) + deduction.places.size * pace.digit),
  };
};
