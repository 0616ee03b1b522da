import {
  accept,
  type Board,
  canonicalName,
  compile,
  decode,
  definitionOf,
  judging,
  limitsOf,
  type Problem,
  prove,
  reaching,
  read,
  runningOrder,
  type Solution,
} from "@solvewright/engine";
import { carriedOut, unlessStopped } from "../../long-work.ts";
import type { AssessForm } from "../../schemas/assess.ts";

/** A file to assess: what is sent to another thread. */
export interface Paper {
  readonly file: string;
  readonly sha256: string;
  readonly bytes: Uint8Array;
}

/** Few runs and trials for each of many puzzles; the seed is always the same, so that the answer is. */
const measures = { runs: 5, trials: 400 };

const tenths = (number: number): number => Math.round(number * 10) / 10;

const boardOf = (bytes: Uint8Array): Board | readonly Problem[] => {
  const text = decode(bytes);
  if (typeof text !== "string") return [text];
  const reading = read(text);
  const puzzle = accept(reading);
  return puzzle ? compile(puzzle) : reading.problems;
};

type Solved = Pick<AssessForm, "level" | "minutes" | "settled" | "open" | "effort" | "dependency" | "refutation">;

const solvedForm = (board: Board, stopped: () => boolean): Solved => {
  const about = definitionOf(board);
  const judge = (claim: Parameters<typeof prove>[0]) => prove(claim, about);
  const reach = carriedOut(reaching(board, judge, { measures }), { stopped });
  const level = reach.viewers.find((viewer) => viewer.through)?.level;
  const { dependency, refutation, whole } = reach.measures;
  const form = {
    settled: reach.viewers.map(({ settled }) => settled),
    open: reach.open,
    effort: tenths(reach.effort),
    dependency: tenths(dependency),
    refutation: whole ? tenths(refutation) : null,
  };
  if (level === undefined) return form;
  const limits = (deduction: Parameters<typeof limitsOf>[2]) => limitsOf(board, about, deduction);
  const { plan } = carriedOut(runningOrder(board, judge, { level, limits }), { stopped });
  return { level, minutes: tenths(plan.seconds / 60), ...form };
};

const puzzleForm = ({ puzzle, rules, givens }: Board, solution: Solution | undefined): Partial<AssessForm> => ({
  title: puzzle.title,
  grids: puzzle.grids.map(({ size }) => size),
  givens: givens.size,
  kinds: [...new Set(puzzle.rules.map(({ kind }) => kind))].sort(),
  leftOut: rules.filter(({ leftOut }) => leftOut).map(({ id }) => id),
  canonical: canonicalName(puzzle, solution),
});

const assessed = ({ file, sha256, bytes }: Paper, stopped: () => boolean): AssessForm => {
  const board = boardOf(bytes);
  if (!("canvas" in board)) return { file, sha256, verdict: "faulty", problems: board.map((each) => ({ ...each })) };
  const { verdict, solutions } = carriedOut(judging(board), { stopped });
  const solution = verdict === "one" ? solutions[0] : undefined;
  return {
    file,
    sha256,
    verdict,
    ...puzzleForm(board, solution),
    ...(solution ? solvedForm(board, stopped) : {}),
  };
};

/** Everything about one puzzle file but its duplicates; undefined where the user stopped it. */
export const assessOne = (paper: Paper, stopped: () => boolean): AssessForm | undefined =>
  unlessStopped(() => assessed(paper, stopped));
