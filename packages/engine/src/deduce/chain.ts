import type { Board } from "../board/board.ts";
import { both, type Digits, has } from "../board/digits.ts";
import {
  at,
  countSettled,
  isBroken,
  isRelated,
  isSettled,
  isSolved,
  type Knowledge,
  startOf,
} from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { relayed } from "../relayed.ts";
import { after } from "./after.ts";
import type { Deduction, Technique } from "./deduction.ts";
import { effortOf, travel } from "./effort.ts";
import { gather } from "./gather.ts";
import { type Judge, judgeOf, type Prove } from "./judge.ts";
import { obeysAll } from "./obeys-all.ts";
import { techniques } from "./registry.ts";
import { isWorkedOut, type Trail, traced, trailOf } from "./trace.ts";
import { whatIf } from "./what-if.ts";

/** The steps that lead to the next digit, each small and proved; the last one settles a cell. */
export type Burst = readonly Deduction[];

export interface Chain {
  readonly bursts: readonly Burst[];
  /** False where the wanted level ends before the grid does, or where reasoning shows that there is no solution. */
  readonly solved: boolean;
  readonly end: Knowledge;
  readonly judge: Judge;
}

export interface ChainOptions {
  /** The highest level wanted, 1 to 5. */
  readonly level?: number;
  readonly ladder?: readonly Technique[];
}

interface Context {
  readonly board: Board;
  readonly judge: Judge;
  readonly tiers: readonly (readonly Technique[])[];
  readonly level: number;
  /** The cells of the last step, where the eye is. */
  readonly eye: readonly Cell[];
}

/** Whether it says something that is not known. */
export const isNew = ({ places, removes, relates }: Deduction, knowledge: Knowledge): boolean =>
  relates.some((related) => !isRelated(knowledge, related)) ||
  [...places].some(([cell, digit]) => !isSettled(knowledge, cell) && has(at(knowledge, cell), digit)) ||
  [...removes].some(([cell, digits]) => both(at(knowledge, cell), digits) !== 0);

/** The placement that is easiest from here, and the steps it needs; the trail holds what was found on the way. */
const easiest = (
  placements: readonly Deduction[],
  local: Knowledge,
  trail: Trail,
  context: Context,
): Burst | undefined => {
  const { board, judge, eye } = context;
  const worked = isWorkedOut(local, board);
  const openFacts = (deduction: Deduction): number => {
    let open = 0;
    for (const [cell, digits] of deduction.because.facts)
      if (!isSettled(local, cell))
        for (let digit = 0; digit < 32; digit++)
          if (has(board.domains[cell]!, digit) && !has(digits, digit) && worked(cell, digit)) open++;
    return open;
  };
  const guess = (deduction: Deduction): number =>
    effortOf(deduction, local) + 1.5 * openFacts(deduction) + travel(board, eye, [...deduction.places.keys()]);
  const ranked = placements.map((deduction) => ({ deduction, cost: guess(deduction) })).sort((a, b) => a.cost - b.cost);
  let best: { burst: Burst; cost: number } | undefined;
  let tried = 0;
  for (const { deduction } of ranked) {
    if (tried >= (trail.found.length > 0 ? 4 : 1)) break;
    const whole = trail.copy();
    whole.add(deduction, local);
    const burst = traced(whole, local, board, judge);
    if (!burst) continue;
    tried++;
    const cost =
      burst.reduce((sum, step) => sum + effortOf(step, local), 0) + travel(board, eye, [...deduction.places.keys()]);
    if (!best || cost < best.cost) best = { burst, cost };
  }
  return best?.burst;
};

/** From a state to the next settled cell; undefined where nothing of the wanted level leads on. */
function* nextBurst(state: Knowledge, context: Context): Generator<void, Burst | undefined> {
  const { board, judge, tiers } = context;
  let trail = trailOf();
  let local = state;
  const usable = (deduction: Deduction): boolean => isNew(deduction, local) && !judge.isRejected(deduction);
  const apply = (deduction: Deduction): void => {
    if (!isNew(deduction, local)) return;
    trail.add(deduction, local);
    local = after(local, board, deduction);
  };
  for (let tier = 0; ; ) {
    yield;
    if (isBroken(local)) return undefined;
    const found =
      tier < tiers.length
        ? gather(local, board, tiers[tier]!).filter(usable)
        : [yield* whatIf(local, context)].filter((step) => step !== undefined);
    const placements = found.filter(({ places }) => places.size > 0);
    const burst = placements.length > 0 ? easiest(placements, local, trail, context) : undefined;
    if (burst) return burst;
    if (placements.length > 0) {
      // Something on the way could not be proved and is rejected now: begin again without it.
      [trail, local, tier] = [trailOf(), state, 0];
      continue;
    }
    const removals = found.filter((deduction) => deduction.places.size === 0 && usable(deduction));
    for (const deduction of [...removals].sort((a, b) => effortOf(a, local) - effortOf(b, local))) apply(deduction);
    tier = removals.length > 0 ? 0 : tier + 1;
    if (tier > tiers.length) return undefined;
  }
}

const tiersOf = (ladder: readonly Technique[], level: number): Technique[][] =>
  [...new Set(ladder.map((technique) => technique.level))]
    .filter((tier) => tier <= level)
    .sort((a, b) => a - b)
    .map((tier) => ladder.filter((technique) => technique.level === tier));

const progress = (knowledge: Knowledge) => ({ settled: countSettled(knowledge), of: knowledge.settled.length });

/** Everything that reasoning finds from the start, step by step, until the grid is solved or the wanted level ends. */
export function* chainOf(
  board: Board,
  prove: Prove,
  options: ChainOptions = {},
): Generator<{ settled: number; of: number }, Chain> {
  const { level = 5, ladder = techniques } = options;
  const judge = judgeOf(board, prove);
  const tiers = tiersOf(ladder, level);
  const bursts: Burst[] = [];
  let knowledge = startOf(board);
  let eye: readonly Cell[] = [];
  while (!isSolved(knowledge)) {
    const burst = yield* relayed(nextBurst(knowledge, { board, judge, tiers, level, eye }), () => progress(knowledge));
    if (!burst) break;
    const kept = freshened(burst, knowledge, board);
    knowledge = kept.reduce((state, step) => after(state, board, step), knowledge);
    bursts.push(kept);
    eye = [...burst.at(-1)!.places.keys()];
    yield progress(knowledge);
  }
  return { bursts, solved: isSolved(knowledge) && obeysAll(board, knowledge), end: knowledge, judge };
}

/** The easiest steps from any state to its next digit; undefined where nothing of the wanted level leads on. */
export function* burstFrom(
  knowledge: Knowledge,
  board: Board,
  judge: Judge,
  { level = 5, ladder = techniques, eye = [] }: ChainOptions & { readonly eye?: readonly Cell[] } = {},
): Generator<void, Burst | undefined> {
  const burst = yield* nextBurst(knowledge, { board, judge, tiers: tiersOf(ladder, level), level, eye });
  return burst && freshened(burst, knowledge, board);
}

/** The steps without what is gone by the time they are taken. */
export const freshened = (burst: Burst, from: Knowledge, board: Board): Burst => {
  const kept: Deduction[] = [];
  let knowledge = from;
  for (const step of burst) {
    const fresh = withFreshRemoves(step, knowledge);
    if (!fresh) continue;
    kept.push(fresh);
    knowledge = after(knowledge, board, fresh);
  }
  return kept;
};

/** The deduction with only what is still new; undefined where nothing is. */
export const withFreshRemoves = (deduction: Deduction, knowledge: Knowledge): Deduction | undefined => {
  if (deduction.places.size > 0) return deduction;
  const removes = new Map<Cell, Digits>();
  for (const [cell, digits] of deduction.removes) {
    const fresh = both(digits, at(knowledge, cell));
    if (fresh !== 0) removes.set(cell, fresh);
  }
  const relates = deduction.relates.filter((related) => !isRelated(knowledge, related));
  return removes.size + relates.length > 0 ? { ...deduction, removes, relates } : undefined;
};
