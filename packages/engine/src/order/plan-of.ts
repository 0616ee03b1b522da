import type { Board } from "../board/board.ts";
import { listOf } from "../board/digits.ts";
import type { Step } from "../deduce/step.ts";
import { actClosing, actOpening, actTitle } from "../speech/english/acts.ts";
import { beatName } from "../speech/english/telling.ts";
import { textOf, wordsIn } from "../speech/line.ts";
import { type Act, actsOf } from "./acts.ts";
import { lineOf } from "./line.ts";
import { speaking, tenths } from "./pace.ts";
import type { Plan, PlanAct, PlanBeat, PlanWrites } from "./plan.ts";
import { rulesAct } from "./rules-act.ts";
import type { Writes } from "./running-order.ts";
import type { Manner, Show, ToldBeat } from "./show.ts";
import { standsOn } from "./stands-on.ts";
import { type StepTelling, toldStep } from "./told-step.ts";
import type { Unmet } from "./wishes/wish.ts";

/** What a plan is made from. */
export interface Made {
  readonly board: Board;
  readonly show: Show;
  readonly manner: Manner;
  readonly limits: StepTelling["limits"];
  readonly solved: boolean;
  readonly unmet: readonly Unmet[];
}

const deductionsIn = ({ steps }: ToldBeat) => steps.map(({ deduction }) => deduction);

const writesOf = (board: Board, { cells, spots }: Writes): PlanWrites => ({
  cells: Object.fromEntries([...cells].map(([cell, digits]) => [board.canvas.names[cell]!, listOf(digits)])),
  spots: spots.map(({ digit, house, cells }) => ({
    digit,
    house,
    cells: cells.map((cell) => board.canvas.names[cell]!),
  })),
});

const stepsOf = ({ board, show, manner, limits }: Made): Step[] => {
  const recalls = show.beats.flatMap(({ steps }) => steps.map((step) => step.recalls));
  return show.steps.map((deduction, index) => {
    const step = toldStep({ board, pace: manner.pace, limits }, deduction, show.states[index]!, index + 1);
    return { ...step, because: { ...step.because, recalls: recalls[index]!.map((earlier) => earlier + 1) } };
  });
};

/** Beats by their numbers in the whole show, after `rules` lines. */
const beatsOf = ({ board, show }: Made, rules: number): PlanBeat[] => {
  const needs = standsOn(board, show.beats);
  const number = (beat: number): number => rules + 1 + beat;
  return show.beats.map((beat, b) => {
    const { first, parts, seconds, pause, steps, spoken, writes } = beat;
    return {
      n: number(b),
      name: beatName(board, deductionsIn(beat)),
      seconds,
      ...(pause ? { pause } : {}),
      ...(deductionsIn(beat).some((step) => show.voice.featured.has(step)) ? { featured: true as const } : {}),
      say: textOf(parts),
      parts,
      placed: textOf(lineOf(spoken, show.states[first]!, show.voice, "placed")),
      steps: steps.map((_, k) => first + k + 1),
      standsOn: needs[b]!.map(number),
      opens: needs.flatMap((need, other) => (need.includes(b) ? [number(other)] : [])),
      writes: writesOf(board, writes),
    };
  });
};

const actOf = ({ board, show, manner }: Made, act: Act, beats: readonly PlanBeat[]): PlanAct => {
  const { from, to } = act;
  const own = show.beats.slice(from, to + 1);
  const deductions = own.flatMap(deductionsIn);
  const start = own[0]!.first;
  const open = actOpening(board, act, deductions, show.states[start]!);
  const close = actClosing(board, deductions, show.states[start + deductions.length]!);
  const told = beats.slice(from, to + 1);
  const spoken = speaking(wordsIn(open) + wordsIn(close), manner.pace);
  const seconds = tenths(told.reduce((sum, beat) => sum + beat.seconds, spoken));
  return { title: actTitle(board, act), seconds, open, close, beats: told };
};

/** Rule kinds and techniques of the show that are not among those met. */
const meetsOf = ({ board, show, manner }: Made): string[] => {
  const names = [...board.rules.map(({ kind }) => kind.name), ...show.steps.map(({ technique }) => technique)];
  return [...new Set(names)].filter((name) => !manner.met.includes(name));
};

/** A told show as the outside sees it. */
export const planOf = (made: Made): Plan => {
  const { board, show, manner, solved, unmet } = made;
  const rules = rulesAct(board, manner.pace, manner.met);
  const steps = stepsOf(made);
  const beats = beatsOf(made, rules.lines.length);
  const acts = actsOf(board, show.beats).map((act) => actOf(made, act, beats));
  return {
    solved,
    level: Math.max(1, ...steps.map(({ level }) => level)),
    seconds: tenths(acts.reduce((sum, { seconds }) => sum + seconds, rules.seconds)),
    unshown: show.unshown,
    rules,
    acts,
    steps,
    meets: meetsOf(made),
    unmet,
    leftOut: board.rules.filter(({ leftOut }) => leftOut).map(({ id }) => id),
  };
};
