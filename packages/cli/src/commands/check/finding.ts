import { type Board, type Clash, findingClash, type Soundness, type Worths, weighing } from "@solvewright/engine";
import type { Asked } from "../../command.ts";
import { carriedOut, unlessStopped } from "../../long-work.ts";
import { soundnessOf } from "../../show.ts";

/** What is known of a puzzle; less where the user stopped it. */
export interface Finding {
  readonly soundness?: Soundness;
  /** Where there is one solution. */
  readonly worths?: Worths;
  /** Where there is none. */
  readonly clash?: Clash;
  readonly isStopped: boolean;
  /** How long the verdict took, in milliseconds. */
  readonly ms: number;
}

const clashIn = (board: Board, asked: Asked): Clash =>
  carriedOut(findingClash(board), asked, () => asked.out.progress("Looking for the smallest clash"));

const worthsIn = (board: Board, [solution]: Soundness["solutions"], asked: Asked): Worths =>
  carriedOut(weighing(board, solution!), asked, () => asked.out.progress("Weighing each rule and given"));

const reasonsFor = (board: Board, { verdict, solutions }: Soundness, asked: Asked): Partial<Finding> => {
  if (verdict === "none") return { clash: clashIn(board, asked) };
  return verdict === "one" ? { worths: worthsIn(board, solutions, asked) } : {};
};

export const findingOn = (board: Board, asked: Asked): Finding => {
  const start = performance.now();
  const soundness = unlessStopped(() => soundnessOf(board, asked));
  const ms = Math.round((performance.now() - start) * 10) / 10;
  if (!soundness) return { isStopped: true, ms };
  const reasons = unlessStopped(() => reasonsFor(board, soundness, asked));
  return { soundness, ...reasons, isStopped: !reasons, ms };
};
