import type { Board } from "../board/board.ts";
import { listOf } from "../board/digits.ts";
import { type Knowledge, startOf, withPlaced } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { type ChainOptions, chainOf } from "../deduce/chain.ts";
import { claimOf } from "../deduce/claim.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Prove, Refusal } from "../deduce/judge.ts";
import type { Step } from "../deduce/step.ts";
import { introductions } from "../speech/english/rules.ts";
import { recalled, sentences } from "../speech/english/sentence.ts";
import { actClosing, actOpening, beatName } from "../speech/english/telling.ts";
import { type Part, textOf, wordsIn } from "../speech/line.ts";
import { phrase } from "../speech/phrase.ts";
import { type Act, actsOf } from "./acts.ts";
import { arranged } from "./arrange.ts";
import { countUnshown } from "./audience.ts";
import { beatsOf } from "./beats.ts";
import { marked } from "./marking.ts";
import { type Pace, speaking, tenths, usualPace } from "./pace.ts";
import type { Plan, PlanAct, PlanBeat, PlanWrites, RuleLine } from "./plan.ts";
import type { OrderedBeat, Writes } from "./running-order.ts";
import { standsOn } from "./stands-on.ts";

export interface PlanOptions extends ChainOptions {
  readonly pace?: Pace;
  /** The cells whose grids' lack of digits a claim needs. */
  readonly limits?: (deduction: Deduction) => readonly string[];
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

/** Everything a step, a beat and an act need to be told. */
interface Telling {
  readonly board: Board;
  readonly pace: Pace;
  /** The state before each step, and one more at the end. */
  readonly states: readonly Knowledge[];
  readonly limits: (deduction: Deduction) => readonly string[];
  readonly steps: readonly Deduction[];
}

const writesOf = (board: Board, { cells, spots }: Writes): PlanWrites => ({
  cells: Object.fromEntries([...cells].map(([cell, digits]) => [board.canvas.names[cell]!, listOf(digits)])),
  spots: spots.map(({ digit, house, cells }) => ({
    digit,
    house,
    cells: cells.map((cell) => board.canvas.names[cell]!),
  })),
});

const marksIn = ({ cells, spots }: Writes): number =>
  [...cells.values()].reduce((sum, digits) => sum + listOf(digits).length, 0) +
  spots.reduce((sum, spot) => sum + spot.cells.length, 0);

/** The sub-steps of a what-if with their numbers, lines and times; each is said in the state that those before it leave. */
const subStepsOf = (told: Telling, { assume, steps = [] }: Deduction, before: Knowledge, prefix: string): Step[] => {
  let state = assume ? withPlaced(before, told.board, [assume]) : before;
  return steps.map((step, k) => {
    const made = stepIn(told, step, state, `${prefix}.${k + 1}`);
    state = after(state, told.board, step);
    return made;
  });
};

/** A step as the outside sees it, said in the state just before it. */
const stepIn = (told: Telling, deduction: Deduction, before: Knowledge, n: number | string): Step => {
  const { board, pace } = told;
  const claim = claimOf(board, deduction);
  const say = textOf(phrase(deduction, before, board, "pointing"));
  return {
    n,
    technique: deduction.technique,
    level: deduction.level,
    ...claim,
    ...(claim.steps ? { steps: subStepsOf(told, deduction, before, `${n}`) } : {}),
    because: { ...claim.because, limits: told.limits(deduction) },
    say,
    seconds: tenths(speaking(wordsIn(say), pace) + deduction.places.size * pace.digit),
  };
};

const stepOf = (told: Telling, deduction: Deduction, index: number, recalls: readonly number[]): Step => {
  const step = stepIn(told, deduction, told.states[index]!, index + 1);
  return { ...step, because: { ...step.because, recalls: recalls.map((earlier) => earlier + 1) } };
};

const ruleLines = (board: Board, pace: Pace): RuleLine[] =>
  introductions(board).map(({ rule, title, say }, k) => ({
    n: k + 1,
    rule,
    title,
    say,
    seconds: tenths(Math.max(pace.ruleKind, speaking(wordsIn(say), pace) + pace.breath)),
  }));

const beatLine = (told: Telling, beat: OrderedBeat, first: number, style: "pointing" | "placed"): Part[] =>
  sentences(
    ...beat.steps.flatMap(({ deduction, recalls }, k) => {
      const state = told.states[first + k]!;
      const again = recalls.map((earlier) => recalled(phrase(told.steps[earlier]!, state, told.board, style)));
      return [...again, phrase(deduction, state, told.board, style, beat.steps[k - 1]?.deduction)];
    }),
  );

const secondsOf = ({ pace }: Telling, say: string, { steps, writes }: OrderedBeat): number => {
  const digits = steps.reduce((sum, { deduction }) => sum + deduction.places.size, 0);
  const breath = steps.some(({ deduction }) => deduction.level >= 3) ? pace.longBreath : pace.breath;
  return tenths(speaking(wordsIn(say), pace) + digits * pace.digit + marksIn(writes) * pace.mark + breath);
};

/** Reasons, orders and tells a whole show: rules, acts, beats and proved steps. Yields progress; the caller may stop. */
export function* runningOrder(board: Board, prove: Prove, options: PlanOptions = {}): Generator<PlanProgress, Planned> {
  const pace = options.pace ?? usualPace;
  const reasoning = chainOf(board, prove, options);
  let next = reasoning.next();
  while (!next.done) {
    yield { stage: "reasoning", share: next.value.settled / next.value.of };
    next = reasoning.next();
  }
  const chain = next.value;
  yield { stage: "ordering", share: 0 };
  const beats = marked(board, beatsOf(arranged(chain.bursts, board, chain.judge), board));
  yield { stage: "words", share: 0 };
  const states: Knowledge[] = [startOf(board)];
  for (const { steps } of beats)
    for (const { deduction } of steps) states.push(after(states.at(-1)!, board, deduction));
  const told: Telling = {
    board,
    pace,
    states,
    limits: options.limits ?? (() => []),
    steps: beats.flatMap(({ steps }) => steps.map(({ deduction }) => deduction)),
  };
  return { plan: planOf(told, beats, chain.solved), refusals: chain.judge.refusals };
}

const planOf = (told: Telling, beats: readonly OrderedBeat[], solved: boolean): Plan => {
  const { board, pace } = told;
  const lines = ruleLines(board, pace);
  const firsts: number[] = [];
  let count = 0;
  for (const { steps } of beats) {
    firsts.push(count);
    count += steps.length;
  }
  const steps = beats.flatMap((beat, b) =>
    beat.steps.map(({ deduction, recalls }, k) => stepOf(told, deduction, firsts[b]! + k, recalls)),
  );
  const needs = standsOn(board, beats);
  const number = (beat: number): number => lines.length + 1 + beat;
  const planBeats = beats.map((beat, b): PlanBeat => {
    const parts = beatLine(told, beat, firsts[b]!, "pointing");
    const say = textOf(parts);
    return {
      n: number(b),
      name: beatName(
        board,
        beat.steps.map(({ deduction }) => deduction),
      ),
      seconds: secondsOf(told, say, beat),
      say,
      parts,
      placed: textOf(beatLine(told, beat, firsts[b]!, "placed")),
      steps: beat.steps.map((_, k) => firsts[b]! + k + 1),
      standsOn: needs[b]!.map(number),
      opens: beats.flatMap((_, other) => (needs[other]!.includes(b) ? [number(other)] : [])),
      writes: writesOf(board, beat.writes),
    };
  });
  const acts = actsOf(board, beats).map((act, k) => planAct(told, act, k === 0, beats, planBeats, firsts));
  const rules = { seconds: tenths(lines.reduce((sum, { seconds }) => sum + seconds, 0)), lines };
  return {
    solved,
    level: Math.max(1, ...steps.map(({ level }) => level)),
    seconds: tenths(rules.seconds + planBeats.reduce((sum, { seconds }) => sum + seconds, 0) + betweenActs(acts, pace)),
    unshown: countUnshown(board, beats),
    rules,
    acts,
    steps,
    leftOut: board.rules.filter(({ leftOut }) => leftOut).map(({ id }) => id),
  };
};

const betweenActs = (acts: readonly PlanAct[], pace: Pace): number =>
  acts.reduce((sum, { open, close }) => sum + speaking(wordsIn(open) + wordsIn(close), pace), 0);

const planAct = (
  told: Telling,
  act: Act,
  isFirst: boolean,
  beats: readonly OrderedBeat[],
  planBeats: readonly PlanBeat[],
  firsts: readonly number[],
): PlanAct => {
  const deductions = beats.slice(act.from, act.to + 1).flatMap(({ steps }) => steps.map(({ deduction }) => deduction));
  const [start, end] = [firsts[act.from]!, firsts[act.from]! + deductions.length];
  return {
    title: act.title,
    open: actOpening(told.board, deductions, told.states[start]!, isFirst),
    close: actClosing(told.board, deductions, told.states[end]!),
    beats: planBeats.slice(act.from, act.to + 1),
  };
};
