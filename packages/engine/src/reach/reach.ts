import type { Board } from "../board/board.ts";
import { countSettled, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { type Burst, type Chain, chainOf } from "../deduce/chain.ts";
import { effortOf } from "../deduce/effort.ts";
import type { Prove } from "../deduce/judge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { relayed } from "../relayed.ts";
import { guessOf, type Place, unfitted, type Weights } from "./guess.ts";
import { type MeasureOptions, type Measures, measuring } from "./measures.ts";
import { openAt } from "./open-at.ts";

/** How far a viewer of one level comes alone. */
export interface Viewer {
  /** 1 newcomer, 2 casual, 3 regular, 4 keen, 5 expert. */
  readonly level: number;
  /** Digits that plain reasoning of that level settles, of those that are not given. */
  readonly settled: number;
  readonly through: boolean;
}

/** One digit of the way through, and what it asks. */
export interface Stretch extends Place {
  readonly cell: Cell;
  readonly digit: number;
  /** The highest level of the steps up to it. */
  readonly level: number;
  /** How long a pause is likely, by the weights. */
  readonly pause: number;
}

export interface Reach {
  readonly open: number;
  readonly viewers: readonly Viewer[];
  /** Digit by digit, at the lowest level that gets through, or as far as reasoning comes at all. */
  readonly way: readonly Stretch[];
  /** The likeliest pauses: places in `way` from 0, the longest first. */
  readonly pauses: readonly number[];
  readonly effort: number;
  readonly measures: Measures;
}

export interface ReachProgress {
  readonly stage: "viewers" | "measures";
  /** From 0 to 1. */
  readonly share: number;
}

export interface ReachOptions {
  readonly measures?: MeasureOptions;
}

const highest = 5;

interface Walked {
  readonly viewers: readonly Viewer[];
  readonly chain: Chain;
}

/** Each level in turn; once one gets through the higher ones do too. */
function* walked(board: Board, prove: Prove): Generator<ReachProgress, Walked> {
  const given = board.givens.size;
  const viewers: Viewer[] = [];
  for (let level = 1; ; level++) {
    const chain = yield* relayed(
      chainOf(board, prove, { level }),
      ({ settled, of }): ReachProgress => ({ stage: "viewers", share: (level - 1 + settled / of) / highest }),
    );
    viewers.push({ level, settled: countSettled(chain.end) - given, through: chain.solved });
    if (!chain.solved && level < highest) continue;
    const last = viewers.at(-1)!;
    for (let more = level + 1; more <= highest; more++) viewers.push({ ...last, level: more });
    return { viewers, chain };
  }
}

const effortIn = (burst: Burst, from: Knowledge, board: Board): number => {
  let [effort, state] = [0, from];
  for (const step of burst) {
    effort += effortOf(step, state);
    state = after(state, board, step);
  }
  return effort;
};

/** What each digit of the way asks, in the order in which reasoning finds them. */
const wayOf = (board: Board, { bursts }: Chain): Stretch[] => {
  let known = startOf(board);
  return bursts.flatMap((burst) => {
    const open = openAt(known, board);
    const place = { effort: effortIn(burst, known, board), open };
    const level = Math.max(...burst.map((step) => step.level));
    const before = known;
    known = burst.reduce((state, step) => after(state, board, step), known);
    const [[cell, digit] = [], ...rest] = burst
      .flatMap(({ places }) => [...places])
      .filter(([cell]) => !isSettled(before, cell));
    if (cell === undefined || digit === undefined) return [];
    const alsoThere = rest.map(([cell, digit]) => ({ cell, digit, level, effort: 0, open, pause: 0 }));
    return [{ cell, digit, level, ...place, pause: guessOf(place, unfitted) }, ...alsoThere];
  });
};

const mostPauses = 5;

/** The longest pauses that stand out: half as long again as the middle one. */
const pausesIn = (way: readonly Stretch[]): number[] => {
  const sorted = way.map(({ pause }) => pause).sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return [...way.keys()]
    .filter((k) => way[k]!.pause > 1.5 * middle)
    .sort((a, b) => way[b]!.pause - way[a]!.pause || a - b)
    .slice(0, mostPauses);
};

/** The same guessed by other weights. */
export const reguessed = (reach: Reach, weights: Weights): Reach => {
  const way = reach.way.map((stretch) => ({ ...stretch, pause: guessOf(stretch, weights) }));
  return { ...reach, way, pauses: pausesIn(way) };
};

/**
 * Who gets through a board with one solution alone, and where they are likely to pause. Relative: no share of viewers
 * is claimed. Yields progress; the caller may stop.
 */
export function* reaching(
  board: Board,
  prove: Prove,
  { measures = {} }: ReachOptions = {},
): Generator<ReachProgress, Reach> {
  const { viewers, chain } = yield* walked(board, prove);
  const way = wayOf(board, chain);
  const measured = yield* relayed(
    measuring(board, measures),
    ({ run, of }): ReachProgress => ({ stage: "measures", share: run / of }),
  );
  return {
    open: board.domains.length - board.givens.size,
    viewers,
    way,
    pauses: pausesIn(way),
    effort: way.reduce((sum, { effort }) => sum + effort, 0),
    measures: measured,
  };
}
