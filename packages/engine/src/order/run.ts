import type { Board } from "../board/board.ts";
import { countSettled } from "../board/knowledge.ts";
import { type Chain, type ChainOptions, chainOf } from "../deduce/chain.ts";
import { judgeOf, type Prove, type Refusal } from "../deduce/judge.ts";
import { relayed } from "../relayed.ts";
import { introductions } from "../speech/english/rules.ts";
import { stopsShort, type Under } from "../speech/english/wishes.ts";
import { candidatesOf } from "./candidates.ts";
import { type Costs, usualCosts } from "./costs.ts";
import { type Pace, usualPace } from "./pace.ts";
import type { Plan } from "./plan.ts";
import { planOf } from "./plan-of.ts";
import type { Planning } from "./planner.ts";
import { poolOf } from "./pool.ts";
import { type Manner, type Show, showOf } from "./show.ts";
import type { StepTelling } from "./told-step.ts";
import { gatesOf } from "./wishes/gates.ts";
import { bindsReasoning, reasoningUnder } from "./wishes/reasoning.ts";
import { unmetBy } from "./wishes/unmet.ts";
import { isFeaturedBy, isWayWish, type Unmet, type Wish } from "./wishes/wish.ts";

export interface PlanOptions extends ChainOptions {
  readonly pace?: Pace;
  readonly costs?: Costs;
  /** Rule kinds and techniques, by their names, that the audience has met in earlier shows. */
  readonly met?: readonly string[];
  /** What the presenter asks of the order; what can't be met is said in the plan. */
  readonly wishes?: readonly Wish[];
  /** The cells whose grids' lack of digits a claim needs. */
  readonly limits?: StepTelling["limits"];
}

export interface PlanProgress {
  readonly stage: "reasoning" | "ordering" | "words";
  /** From 0 to 1. */
  readonly share: number;
}

export interface Planned {
  readonly plan: Plan;
  readonly refusals: readonly Refusal[];
}

const underOf = (wish: Wish): Under =>
  wish.wish === "level" ? { most: wish.most } : isWayWish(wish) ? "that way alone" : "without that";

/** Wishes that let the reasoning reach the end, or as far as it comes without any; the others with the reason why not. */
interface Reasoned {
  readonly chain: Chain;
  readonly reasoning: Required<ChainOptions>;
  readonly unmet: readonly Unmet[];
}

/** Reasons under the wishes; where that does not reach the end, each wish without which it comes further is given up. */
function* reasoned(board: Board, prove: Prove, options: PlanOptions): Generator<PlanProgress, Reasoned> {
  const judge = judgeOf(board, prove);
  const chainUnder = function* (kept: readonly Wish[]): Generator<PlanProgress, Omit<Reasoned, "unmet">> {
    const reasoning = reasoningUnder(kept, board, options, judge);
    const chain = yield* relayed(chainOf(board, prove, reasoning), ({ settled, of }) => ({
      stage: "reasoning" as const,
      share: settled / of,
    }));
    return { chain, reasoning };
  };
  let binding = (options.wishes ?? []).filter(bindsReasoning);
  let made = yield* chainUnder(binding);
  const unmet: Unmet[] = [];
  for (const wish of binding.toReversed()) {
    if (made.chain.solved) break;
    const others = binding.filter((other) => other !== wish);
    const without = yield* chainUnder(others);
    if (countSettled(without.chain.end) <= countSettled(made.chain.end)) continue;
    const given = board.givens.size;
    unmet.push({
      wish,
      why: stopsShort(countSettled(made.chain.end) - given, board.canvas.names.length - given, underOf(wish)),
    });
    [binding, made] = [others, without];
  }
  return { ...made, unmet };
}

const planningOf = (board: Board, { chain, reasoning }: Reasoned, manner: Manner): Planning => {
  const { bursts, judge } = chain;
  const pool = poolOf(bursts, board);
  return {
    board,
    judge,
    pool,
    easy: reasoning.ladder.filter(({ level }) => level === 1),
    costs: manner.costs,
    pace: manner.pace,
    gate: gatesOf(manner.wishes, board, pool),
    isFeatured: (step) => manner.wishes.some((wish) => isFeaturedBy(wish, step)),
  };
};

const cheapest = (shows: readonly Show[]): Show =>
  shows.reduce((best, show) => (show.price < best.price ? show : best));

/** The show to be told: of those that fulfil most wishes the one that asks least. */
const chosen = (shows: readonly Show[], unmet: (show: Show) => readonly Unmet[]): Show => {
  const counts = shows.map((show) => unmet(show).length);
  const least = Math.min(...counts);
  return cheapest(shows.filter((_, k) => counts[k] === least));
};

/** Reasons, orders and tells a whole show: rules, acts, beats and proved steps. Yields progress; the caller may stop. */
export function* runningOrder(board: Board, prove: Prove, options: PlanOptions = {}): Generator<PlanProgress, Planned> {
  const { pace = usualPace, costs = usualCosts, met = [], wishes = [], limits = () => [] } = options;
  const manner: Manner = { pace, costs, met, wishes };
  const made = yield* reasoned(board, prove, options);
  const { chain } = made;
  const ordering = candidatesOf(chain.bursts, planningOf(board, made, manner));
  const orders = yield* relayed(ordering, (share) => ({ stage: "ordering" as const, share }));
  const shows: Show[] = [];
  for (const bursts of orders) {
    yield { stage: "words", share: shows.length / orders.length };
    shows.push(showOf(board, bursts, manner));
  }
  const rules = introductions(board).length;
  const open = wishes.filter((wish) => !made.unmet.some((other) => other.wish === wish));
  const unmetIn = (show: Show): Unmet[] => unmetBy(open, board, show, rules);
  const show = chosen(shows, unmetIn);
  const unmet = [...made.unmet, ...unmetIn(show)];
  return { plan: planOf({ board, show, manner, limits, solved: chain.solved, unmet }), refusals: chain.judge.refusals };
}
