import type { Board } from "../board/board.ts";
import { listOf } from "../board/digits.ts";
import { isSettled, isSolved, type Knowledge, startOf, withPlaced } from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Random, randomFrom } from "../random.ts";
import { relayed } from "../relayed.ts";
import { easySteps, isContradicted, withCluesSeen } from "./easy-steps.ts";
import { mean, standardError } from "./statistics.ts";

/**
 * How hard people find it, relatively, as published for classic puzzles (Pelánek, FLAIRS-24, 2011, and arXiv:1403.7373):
 * there, mean solving times correlate 0.67 to 0.69 with dependency, 0.68 to 0.83 with refutation, 0.74 to 0.88 with both.
 * No published figure exists for variants; there each clue by itself counts as seen.
 */
export interface Measures {
  /** Cells that an easy step settles at the start. */
  readonly first: number;
  /** The same, averaged over the first 20 steps and all runs; a place where easy steps run out counts 0. */
  readonly dependency: number;
  /** The standard error of that mean: how far another seed's may well lie from it. */
  readonly dependencyError: number;
  /** The steps of the contradictions that it takes where easy steps run out, the assumption counted, averaged over the runs. */
  readonly refutation: number;
  readonly refutationError: number;
  /** False where a run met a place that no single digit's trial by easy steps leads on from; refutation is then at least this. */
  readonly whole: boolean;
  /** Runs done; fewer than asked for where the trials were used up. */
  readonly runs: number;
  readonly seed: number;
}

export interface MeasureOptions {
  readonly runs?: number;
  readonly seed?: number;
  /** Cells whose digits are tried over all runs before it ends with the runs that are done. */
  readonly trials?: number;
}

/** How many steps the published dependency averages over. */
const opening = 20;

const placed = (knowledge: Knowledge, board: Board, cell: Cell, digit: number): Knowledge =>
  withCluesSeen(withPlaced(knowledge, board, [[cell, digit]]), board, [cell, ...board.sees[cell]!]);

/** How many steps, the assumption counted, until easy steps taken by chance contradict; undefined where they run out. */
const trialLength = (from: Knowledge, board: Board, trial: [Cell, number], chance: Random): number | undefined => {
  let state = placed(from, board, ...trial);
  for (let length = 1; ; length++) {
    if (isContradicted(state, board)) return length;
    const steps = [...easySteps(state, board)];
    if (steps.length === 0) return undefined;
    state = placed(state, board, ...chance.pick(steps));
  }
};

interface Refuted {
  readonly cell: Cell;
  readonly digit: number;
  /** The contradictions of all its other digits, summed. */
  readonly length: number;
}

/** What trying each digit of a cell comes to; undefined where it leaves more than one. */
const refuted = (from: Knowledge, board: Board, cell: Cell, chance: Random): Refuted | undefined => {
  let [length, left, digit] = [0, 0, -1];
  for (const tried of listOf(from.possible[cell]!)) {
    const own = trialLength(from, board, [cell, tried], chance);
    if (own === undefined && left++ > 0) return undefined;
    if (own === undefined) digit = tried;
    else length += own;
  }
  return left === 1 ? { cell, digit, length } : undefined;
};

interface Run {
  readonly open: readonly number[];
  readonly refutation: number;
  readonly whole: boolean;
}

/** One solve by easy steps taken by chance; where they run out, the cell whose wrong digits fail soonest is settled. */
function* oneRun(board: Board, chance: Random, budget: { trials: number }): Generator<void, Run> {
  const open: number[] = [];
  let refutation = 0;
  let state = withCluesSeen(startOf(board), board, board.domains.keys());
  while (!isSolved(state)) {
    const steps = [...easySteps(state, board)];
    open.push(steps.length);
    if (steps.length > 0) {
      state = placed(state, board, ...chance.pick(steps));
      continue;
    }
    let best: Refuted[] = [];
    for (const cell of board.domains.keys()) {
      if (isSettled(state, cell)) continue;
      if (budget.trials-- <= 0) return { open, refutation, whole: false };
      const found = refuted(state, board, cell, chance);
      yield;
      if (!found || found.length > (best[0]?.length ?? Number.POSITIVE_INFINITY)) continue;
      best = found.length === best[0]?.length ? [...best, found] : [found];
    }
    if (best.length === 0) return { open, refutation, whole: false };
    const { cell, digit, length } = chance.pick(best);
    refutation += length;
    state = placed(state, board, cell, digit);
  }
  return { open, refutation, whole: true };
}

/** The published measures of dependency and refutation of a board with one solution; the same for the same seed. */
export function* measuring(
  board: Board,
  { runs = 30, seed = 1, trials = Number.POSITIVE_INFINITY }: MeasureOptions = {},
): Generator<{ run: number; of: number }, Measures> {
  const chance = randomFrom(seed);
  const budget = { trials };
  const made: Run[] = [];
  for (let run = 0; run < runs && budget.trials > 0; run++) {
    const one = yield* relayed(oneRun(board, chance, budget), () => ({ run, of: runs }));
    const isCutShort = budget.trials <= 0 && !one.whole;
    if (!isCutShort || made.length === 0) made.push(one);
  }
  const dependencies = made.map(({ open }) => mean(open.slice(0, opening)));
  const refutations = made.map(({ refutation }) => refutation);
  return {
    first: made[0]?.open[0] ?? 0,
    dependency: mean(dependencies),
    dependencyError: standardError(dependencies),
    refutation: mean(refutations),
    refutationError: standardError(refutations),
    whole: made.every(({ whole }) => whole),
    runs: made.length,
    seed,
  };
}
