import type { Board } from "../../board/board.ts";
import { type Knowledge, startOf } from "../../board/knowledge.ts";
import { afterStep } from "../../deduce/after.ts";
import { conclusionFrom } from "../../deduce/claim.ts";
import type { Conclusion, Deduction } from "../../deduce/deduction.ts";
import { gather } from "../../deduce/gather.ts";
import { type Judge, judgeOf, type Prove } from "../../deduce/judge.ts";
import { techniques } from "../../deduce/registry.ts";
import type { Step } from "../../deduce/step.ts";
import { conclusionSaid } from "../../speech/english/conclusion.ts";
import { textOf, wordsIn } from "../../speech/line.ts";
import { phrase } from "../../speech/phrase.ts";
import { guessOf, usualCosts } from "../costs.ts";
import { usualPace } from "../pace.ts";
import type { Plan } from "../plan.ts";
import { type StepTelling, toldStep } from "../told-step.ts";
import { leansOn, type WayKey, type Wish } from "../wishes/wish.ts";
import { wayTo } from "./way.ts";

/** Another reason for what a step concludes, made small and proved. */
export interface OtherWay {
  readonly step: Step;
  /** Its line in the placed style. */
  readonly placed: string;
  /** What takes this way in the step's place; none where the step ties cells together, which no wish can ask for. */
  readonly wish?: Wish;
}

/** A step of a beat and the other ways to it, the best first. */
export interface StepWays {
  readonly step: Step;
  /** What it says, without its reason. */
  readonly said: string;
  readonly ways: readonly OtherWay[];
}

const wayKeyOf = (step: Step): WayKey => ({ technique: step.technique, by: leansOn(step.because) });

const wishFor = ({ places, removes }: Step, way: WayKey): Wish | undefined => {
  const [cell] = Object.keys(places);
  if (cell !== undefined) return { wish: "another", cell, way };
  return Object.keys(removes).length > 0 ? { wish: "another", gone: removes, way } : undefined;
};

/** Two ways that a wish could not tell apart are one: the same thought with another digit seen. */
const thoughtOf = (step: Step): string => JSON.stringify([step.technique, [...leansOn(step.because)].sort()]);

/** The same for the same premises, in whatever order they are listed and whatever they are called. */
const premisesOf = ({ because }: Step): string => {
  const { facts, spots, relations, houses, rules } = because;
  return JSON.stringify(
    [Object.entries(facts), spots, relations, houses, rules].map((list) =>
      list.map((premise) => JSON.stringify(premise)).sort(),
    ),
  );
};

interface Found {
  readonly way: OtherWay;
  readonly thought: string;
  readonly premises: string;
  readonly cost: number;
}

/** The cheapest of those that have a thought or their premises in common, the cheapest first. */
const different = (found: readonly Found[]): Found[] => {
  const kept: Found[] = [];
  for (const one of [...found].sort((a, b) => a.cost - b.cost))
    if (!kept.some(({ thought, premises }) => thought === one.thought || premises === one.premises)) kept.push(one);
  return kept;
};

const costOf = (deduction: Deduction, knowledge: Knowledge, board: Board): number => {
  const words = wordsIn(textOf(phrase(deduction, knowledge, board, "pointing")));
  return guessOf(deduction, knowledge, board, usualCosts, words, usualPace, []);
};

/** All ways to what a step concludes from a state but its own, the best first. Yields between proofs. */
function* waysFrom(
  step: Step,
  wanted: Conclusion,
  state: Knowledge,
  telling: StepTelling,
  judge: Judge,
): Generator<void, OtherWay[]> {
  const { board } = telling;
  const found: Found[] = [];
  for (const deduction of gather(state, board, techniques)) {
    yield;
    const small = wayTo(wanted, deduction, state, board, judge);
    if (!small) continue;
    const told = toldStep(telling, small, state, step.n);
    const [thought, premises] = [thoughtOf(told), premisesOf(told)];
    if (thought === thoughtOf(step) || premises === premisesOf(step)) continue;
    const wish = wishFor(step, wayKeyOf(told));
    const placed = textOf(phrase(small, state, board, "placed"));
    const cost = costOf(small, state, board);
    found.push({ way: { step: told, placed, ...(wish ? { wish } : {}) }, thought, premises, cost });
  }
  return different(found).map(({ way }) => way);
}

/**
 * The other ways to each step of a beat (its number in the show) of a running order, on the board as it stands when the
 * step comes: each a single step, made small and proved. What-ifs are no other way: they can be had for anything.
 */
export function* otherWays(
  board: Board,
  prove: Prove,
  plan: Plan,
  beat: number,
  limits: StepTelling["limits"] = () => [],
): Generator<void, StepWays[]> {
  const judge = judgeOf(board, prove);
  const { steps: own } = plan.acts.flatMap(({ beats }) => beats).find(({ n }) => n === beat)!;
  const found: StepWays[] = [];
  let state = startOf(board);
  for (const step of plan.steps) {
    if (own.includes(step.n)) {
      const wanted = conclusionFrom(board, step);
      const ways = yield* waysFrom(step, wanted, state, { board, pace: usualPace, limits }, judge);
      found.push({ step, said: conclusionSaid(board, wanted), ways });
    }
    if (step.n === own.at(-1)) return found;
    state = afterStep(state, board, step);
  }
  return found;
}
