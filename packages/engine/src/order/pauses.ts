import type { Board } from "../board/board.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { pauseLine } from "../speech/english/telling.ts";
import { wordsIn } from "../speech/line.ts";
import { type Pace, speaking, tenths } from "./pace.ts";
import type { PlanPause } from "./plan.ts";

/** From this level on a step is worth looking for oneself. */
const hardFrom = 3;

export const isHard = (steps: readonly Deduction[]): boolean => steps.some(({ level }) => level >= hardFrom);

/** What invites the audience to pause before a beat with a hard or featured step; `isAgain` where the beat before had one too. */
export const pauseBefore = (
  steps: readonly Deduction[],
  board: Board,
  pace: Pace,
  isAgain: boolean,
  isFeatured: (step: Deduction) => boolean,
): PlanPause | undefined => {
  const hard = steps.findIndex((step) => step.level >= hardFrom || isFeatured(step));
  if (hard < 0) return undefined;
  const say = pauseLine(board, steps.slice(hard), isAgain);
  return { say, seconds: tenths(speaking(wordsIn(say), pace) + pace.longBreath) };
};
