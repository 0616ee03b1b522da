import { isSolved, type Knowledge } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { joinedOf } from "../speech/english/joined.ts";
import { recallOf } from "../speech/english/recall.ts";
import { sentence, sentences } from "../speech/english/sentence.ts";
import type { Part, Style } from "../speech/line.ts";
import { phrase } from "../speech/phrase.ts";
import type { Voice } from "./voice.ts";

/** A step to be said, with the earlier ones whose reason is said again before it. */
export interface Spoken {
  readonly deduction: Deduction;
  readonly again: readonly Deduction[];
}

/** The line of a beat that begins in this state; steps that can be said together are. `before`: the step of the beat before. */
export const lineOf = (
  steps: readonly Spoken[],
  from: Knowledge,
  { board, namings }: Voice,
  style: Style,
  before?: Deduction,
): Part[] => {
  const said: Part[][] = [];
  const states = [from];
  for (const { deduction } of steps) states.push(after(states.at(-1)!, board, deduction));
  const isEnd = isSolved(states.at(-1)!);
  for (let k = 0; k < steps.length; ) {
    const { deduction, again } = steps[k]!;
    const rest = steps.slice(k).map((step, j) => ({ deduction: step.deduction, before: states[k + j]! }));
    const joined =
      again.length === 0
        ? joinedOf(rest, board, style, { isEnd, isFirst: k === 0 && before === undefined })
        : undefined;
    if (joined) said.push([...joined.parts]);
    else {
      for (const earlier of again) said.push(recallOf(earlier, states[k]!, board, style));
      said.push(phrase(deduction, states[k]!, board, style, steps[k - 1]?.deduction ?? before));
    }
    const naming = namings.get(deduction);
    if (naming) said.push(sentence(naming.say));
    k += joined?.count ?? 1;
  }
  return sentences(...said);
};
