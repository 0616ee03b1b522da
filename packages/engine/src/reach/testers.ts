import type { Board } from "../board/board.ts";
import { type Knowledge, startOf, withPlaced } from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { fitted, type Observed } from "./fit.ts";
import { guessOf, unfitted, type Weights } from "./guess.ts";
import { openAt } from "./open-at.ts";
import type { Reach } from "./reach.ts";
import { mean, standardError } from "./statistics.ts";

/** A digit settled by a tester (undefined: taken out again), and when, in milliseconds of solving. */
export interface Settling {
  readonly at: number;
  readonly cell: Cell;
  readonly digit?: number;
}

/** What testers' times say of the guess. */
export interface Tested {
  readonly testers: number;
  /** Pauses before a digit that is right; the first of each tester is left out, as the rules are read in it. */
  readonly pauses: number;
  /**
   * Rank correlation (Spearman) of the unfitted guess with their pauses, each tester's by itself, averaged; `error` is the
   * standard error over testers, absent for one alone. Absent where no tester has enough pauses.
   */
  readonly correlation?: { readonly mean: number; readonly error?: number };
  /** Absent where there are too few testers or pauses. */
  readonly fit?: {
    /** In seconds. */
    readonly weights: Weights;
    /** Mean distance in seconds from the pauses of a tester who was left out of the fit. */
    readonly error: number;
    /** The same where each pause is guessed to be as long as the others' middle one. */
    readonly errorOfMiddle: number;
    readonly better: boolean;
  };
}

/** Fewer say nothing about ranks. */
const leastForRanks = 8;
const leastTesters = 3;
const leastPauses = 40;

/** The pauses of one tester, each with what the place asked on the tester's own board. */
const observedBy = (board: Board, reach: Reach, solution: ArrayLike<number>, log: readonly Settling[]): Observed[] => {
  const efforts = new Map(reach.way.map(({ cell, effort }) => [cell, effort]));
  const done = new Set<Cell>();
  const observed: Observed[] = [];
  let known: Knowledge = startOf(board);
  let last: number | undefined;
  for (const { at, cell, digit } of [...log].sort((a, b) => a.at - b.at)) {
    if (digit === undefined || digit !== solution[cell] || done.has(cell) || known.settled[cell]) continue;
    const effort = efforts.get(cell);
    if (last !== undefined && effort !== undefined)
      observed.push({ effort, open: openAt(known, board), seconds: (at - last) / 1000 });
    done.add(cell);
    last = at;
    known = withPlaced(known, board, [[cell, digit]]);
  }
  return observed;
};

/** Places in the order of size, from 1; equal ones share the middle of theirs. */
const ranksOf = (numbers: readonly number[]): number[] =>
  numbers.map((number) => {
    const less = numbers.filter((other) => other < number).length;
    const same = numbers.filter((other) => other === number).length;
    return less + (same + 1) / 2;
  });

const pearson = (a: readonly number[], b: readonly number[]): number | undefined => {
  const [middleA, middleB] = [mean(a), mean(b)];
  const sum = (of: (k: number) => number): number => a.reduce((total, _, k) => total + of(k), 0);
  const both = sum((k) => (a[k]! - middleA) * (b[k]! - middleB));
  const size = Math.sqrt(sum((k) => (a[k]! - middleA) ** 2) * sum((k) => (b[k]! - middleB) ** 2));
  return size > 0 ? both / size : undefined;
};

/** How far two lists rank alike: from -1 to 1; undefined where one of them is all the same. */
export const rankCorrelation = (a: readonly number[], b: readonly number[]): number | undefined =>
  pearson(ranksOf(a), ranksOf(b));

const correlationOf = (testers: readonly (readonly Observed[])[]): Tested["correlation"] => {
  const each = testers
    .filter((observed) => observed.length >= leastForRanks)
    .flatMap((observed) => {
      const guesses = observed.map((place) => guessOf(place, unfitted));
      return (
        rankCorrelation(
          guesses,
          observed.map(({ seconds }) => seconds),
        ) ?? []
      );
    });
  if (each.length === 0) return undefined;
  return { mean: mean(each), ...(each.length > 1 ? { error: standardError(each) } : {}) };
};

const medianOf = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!;

const distances = (observed: readonly Observed[], guess: (place: Observed) => number): number[] =>
  observed.map((place) => Math.abs(place.seconds - guess(place)));

const fitOf = (testers: readonly (readonly Observed[])[]): Tested["fit"] => {
  const all = testers.flat();
  if (testers.length < leastTesters || all.length < leastPauses) return undefined;
  const [byFit, byMiddle]: [number[], number[]] = [[], []];
  for (const left of testers) {
    const others = testers.filter((other) => other !== left).flat();
    const weights = fitted(others);
    const middle = medianOf(others.map(({ seconds }) => seconds));
    byFit.push(...distances(left, (place) => guessOf(place, weights)));
    byMiddle.push(...distances(left, () => middle));
  }
  const [error, errorOfMiddle] = [mean(byFit), mean(byMiddle)];
  return { weights: fitted(all), error, errorOfMiddle, better: error < errorOfMiddle };
};

/** Holds the guess of a reach to testers' own times, and fits its weights where there are enough of them. */
export const testedBy = (
  board: Board,
  reach: Reach,
  solution: ArrayLike<number>,
  logs: readonly (readonly Settling[])[],
): Tested => {
  const testers = logs.map((log) => observedBy(board, reach, solution, log)).filter(({ length }) => length > 0);
  const correlation = correlationOf(testers);
  const fit = fitOf(testers);
  return {
    testers: testers.length,
    pauses: testers.flat().length,
    ...(correlation ? { correlation } : {}),
    ...(fit ? { fit } : {}),
  };
};
