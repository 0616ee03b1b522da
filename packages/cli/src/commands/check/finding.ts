import {
  type Assumption,
  assuming,
  type Board,
  type Clash,
  compareWording,
  type Extent,
  findingClash,
  type Mend,
  measuringExtent,
  mending,
  type Soundness,
  type Wording,
  type Worths,
  weighing,
} from "@solvewright/engine";
import type { Asked } from "../../command.ts";
import { asFarAsKnown, carriedOut, unlessStopped } from "../../long-work.ts";
import { soundnessOf } from "../../show.ts";

/** What is known of a puzzle; less where the user stopped it. */
export interface Finding {
  readonly soundness?: Soundness;
  /** Where there is one solution. */
  readonly worths?: Worths;
  /** Where there is one solution. */
  readonly assumptions?: readonly Assumption[];
  /** Where there is none. */
  readonly clash?: Clash;
  /** Where there are several. */
  readonly extent?: Extent;
  /** Where there is not exactly one. */
  readonly mends?: readonly Mend[];
  /** Where the file has the setter's own wording. */
  readonly wording?: Wording;
  readonly isStopped: boolean;
  /** How long the verdict took, in milliseconds. */
  readonly ms: number;
}

type Part = Partial<Finding>;

/** Solutions that are counted, of a puzzle that has several. */
const mostCounted = 1000;

const clashIn = (board: Board, asked: Asked): Part => ({
  clash: carriedOut(findingClash(board), asked, () => asked.out.progress("Looking for the smallest clash")),
});

const worthsIn = (board: Board, [solution]: Soundness["solutions"], asked: Asked): Part => ({
  worths: carriedOut(weighing(board, solution!), asked, () => asked.out.progress("Weighing each rule and given")),
});

const extentOf = (board: Board, asked: Asked): Part => ({
  extent: carriedOut(measuringExtent(board, mostCounted), asked, ({ found }) =>
    asked.out.progress("Counting solutions", `${found} so far`),
  ),
});

const assumptionsIn = (board: Board, [solution]: Soundness["solutions"], asked: Asked): Part => {
  const work = assuming(board, solution!);
  const { found, isStopped } = asFarAsKnown(work, asked, () => asked.out.progress("Reading it in other ways"));
  return { assumptions: found, isStopped };
};

const mendsOf = (board: Board, { verdict }: Soundness, clash: Clash | undefined, asked: Asked): Part => {
  const work = mending(board, verdict, clash);
  const { found, isStopped } = asFarAsKnown(work, asked, () => asked.out.progress("Looking for mends"));
  return { mends: found, isStopped };
};

/** One after the other, as far as the user lets it come. */
const stagesFor = (board: Board, soundness: Soundness, asked: Asked): ((sofar: Part) => Part)[] => {
  const { verdict, solutions } = soundness;
  const mends = ({ clash }: Part): Part => mendsOf(board, soundness, clash, asked);
  if (verdict === "several") return [() => extentOf(board, asked), mends];
  if (verdict === "none") return [() => clashIn(board, asked), mends];
  return [() => worthsIn(board, solutions, asked), () => assumptionsIn(board, solutions, asked)];
};

const wordingOf = (board: Board): Part => {
  const wording = compareWording(board);
  return wording ? { wording } : {};
};

export const findingOn = (board: Board, asked: Asked): Finding => {
  const start = performance.now();
  const soundness = unlessStopped(() => soundnessOf(board, asked));
  const ms = Math.round((performance.now() - start) * 10) / 10;
  if (!soundness) return { isStopped: true, ms };
  let known: Finding = { soundness, ...wordingOf(board), isStopped: false, ms };
  for (const stage of stagesFor(board, soundness, asked)) {
    known = { ...known, ...(unlessStopped(() => stage(known)) ?? { isStopped: true }) };
    if (known.isStopped) break;
  }
  return known;
};
