import type { Board } from "../board/board.ts";
import { listOf } from "../board/digits.ts";
import { type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Burst } from "../deduce/chain.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { type Part, textOf, wordsIn } from "../speech/line.ts";
import { countUnshown } from "./audience.ts";
import { beatsOf } from "./beats.ts";
import { inBreaths, spokenOf } from "./breaths.ts";
import type { Costs } from "./costs.ts";
import { lineOf, type Spoken } from "./line.ts";
import { unlike } from "./openings.ts";
import { type Pace, speaking, tenths } from "./pace.ts";
import { isHard, pauseBefore } from "./pauses.ts";
import type { PlanPause } from "./plan.ts";
import { askedOf, priceOf } from "./price.ts";
import type { OrderedBeat, Writes } from "./running-order.ts";
import { type Voice, voiceOf } from "./voice.ts";
import type { Wish } from "./wishes/wish.ts";

/** A beat with its words and its time. */
export interface ToldBeat extends OrderedBeat {
  /** Index of its first step in the whole order. */
  readonly first: number;
  readonly spoken: readonly Spoken[];
  readonly parts: readonly Part[];
  readonly pause?: PlanPause;
  readonly seconds: number;
}

/** A whole order in beats, told, and what it asks of those who follow it. */
export interface Show {
  readonly voice: Voice;
  readonly beats: readonly ToldBeat[];
  readonly steps: readonly Deduction[];
  /** The state before each step, and one more at the end. */
  readonly states: readonly Knowledge[];
  readonly unshown: number;
  readonly price: number;
}

export interface Manner {
  readonly pace: Pace;
  readonly costs: Costs;
  /** Rule kinds and techniques, by their names, that the audience has met in earlier shows. */
  readonly met: readonly string[];
  readonly wishes: readonly Wish[];
}

const marksIn = ({ cells, spots }: Writes): number =>
  [...cells.values()].reduce((sum, digits) => sum + listOf(digits).length, 0) +
  spots.reduce((sum, spot) => sum + spot.cells.length, 0);

/** Nothing that an order saves outweighs a fact that nobody showed. */
const forbidden = 100_000;

const statesOf = (board: Board, steps: readonly Deduction[]): Knowledge[] => {
  const states = [startOf(board)];
  for (const step of steps) states.push(after(states.at(-1)!, board, step));
  return states;
};

/** A first meeting takes a longer breath; the long one before a hard step is its pause's. */
const secondsOf = ({ pace }: Manner, voice: Voice, say: string, beat: OrderedBeat, pause: PlanPause | undefined) => {
  const steps = beat.steps.map(({ deduction }) => deduction);
  const digits = steps.reduce((sum, { places }) => sum + places.size, 0);
  const isSlow = steps.some((step) => voice.namings.get(step)?.isFirst);
  const breath = isSlow ? pace.longBreath : pace.breath;
  return tenths(
    speaking(wordsIn(say), pace) +
      digits * pace.digit +
      marksIn(beat.writes) * pace.mark +
      breath +
      (pause?.seconds ?? 0),
  );
};

/** The words of each beat in turn, none of which opens like the one before it. */
const linesOf = (
  spoken: readonly (readonly Spoken[])[],
  firsts: readonly number[],
  states: readonly Knowledge[],
  voice: Voice,
) => {
  const lines: Part[][] = [];
  for (const [k, steps] of spoken.entries()) {
    const own = steps.map(({ deduction }) => voice.words.get(deduction)).find((say) => say !== undefined);
    if (own !== undefined) {
      lines.push([{ text: own, role: "plain" }]);
      continue;
    }
    const from = states[firsts[k]!]!;
    const before = spoken[k - 1]?.at(-1)?.deduction;
    const ways = [() => lineOf(steps, from, voice, "pointing"), () => lineOf(steps, from, voice, "pointing", before)];
    const last = lines.at(-1);
    lines.push(unlike(last && textOf(last), ways, () => [voice.board, before!, steps[0]!.deduction]));
  }
  return lines;
};

/** An order in beats, with its marks, its words and its times. */
export const showOf = (board: Board, bursts: readonly Burst[], manner: Manner): Show => {
  const voice = voiceOf(board, bursts.flat(), manner.met, manner.wishes);
  const ordered = inBreaths(voice, beatsOf(bursts, voice));
  const steps = ordered.flatMap((beat) => beat.steps.map(({ deduction }) => deduction));
  const states = statesOf(board, steps);
  const firsts: number[] = [];
  let count = 0;
  for (const beat of ordered) {
    firsts.push(count);
    count += beat.steps.length;
  }
  const spoken = spokenOf(ordered);
  const lines = linesOf(spoken, firsts, states, voice);
  const beats = ordered.map((beat, k): ToldBeat => {
    const own = beat.steps.map(({ deduction }) => deduction);
    const isAgain = k > 0 && isHard(ordered[k - 1]!.steps.map(({ deduction }) => deduction));
    const pause = pauseBefore(own, board, manner.pace, isAgain, (step) => voice.featured.has(step));
    return {
      ...beat,
      first: firsts[k]!,
      parts: lines[k]!,
      spoken: spoken[k]!,
      ...(pause ? { pause } : {}),
      seconds: secondsOf(manner, voice, textOf(lines[k]!), beat, pause),
    };
  });
  const words = beats.reduce((sum, { parts, pause }) => sum + wordsIn(textOf(parts)) + wordsIn(pause?.say ?? ""), 0);
  const seconds = beats.reduce((sum, beat) => sum + beat.seconds, 0);
  const unshown = countUnshown(board, ordered);
  const price = priceOf(askedOf(board, ordered, { seconds, words }), manner.costs) + unshown * forbidden;
  return { voice, beats, steps, states, unshown, price };
};
