import type { Board } from "../board/board.ts";
import { has, listOf, none, without } from "../board/digits.ts";
import { isSettled, type Knowledge } from "../board/knowledge.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { effortOf } from "../deduce/effort.ts";
import { isWorkedOut } from "../deduce/trace.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Pace, speaking } from "./pace.ts";

/** What an order costs those who follow it. The unit is a second of the show; all else is put in what it is worth of that. */
export interface Costs {
  /** A thought to follow, as deduce/effort.ts counts them: a newcomer's step is about one. */
  readonly thought: number;
  /** A word more, beside the time that it takes: people tire of talk before they tire of watching. */
  readonly word: number;
  /** A pencil mark that stands while a beat is told: clutter that the eye must pass over. */
  readonly standing: number;
  /** The way of the eye, as deduce/effort.ts counts it: nothing in the same house, 2.5 into another grid. */
  readonly travel: number;
  /** A digit that is known to be gone from an open cell only since it was worked out before: it must be marked or recalled. */
  readonly remembered: number;
  /** How much sooner a step is taken by a clue or a technique that the presenter wants featured. */
  readonly featured: number;
  /** How much sooner a way in is taken that everything later stands on; a share of it for one that less stands on. */
  readonly wayIn: number;
}

export const usualCosts: Costs = {
  // A level 3 step (5 thoughts) may take as much patience again as the ten seconds in which it is said.
  thought: 2,
  // Ten words (three seconds) more cost a second more than their time.
  word: 0.1,
  // Twenty marks standing for a whole beat are worth one second, so ten minutes of them about a minute.
  standing: 0.05,
  // A jump into another grid is worth five seconds, two easy digits' time; within a grid under two.
  travel: 2,
  // Writing it is half a second, and it then stands for a while: so three in a cell weigh like one jump.
  remembered: 1.2,
  // Worth going a longer way for, by a step or two.
  featured: 15,
  // More than any one step costs, so that a show opens with what unlocks it.
  wayIn: 40,
};

/** What a line of its technique usually takes, for steps that are not made small and put in words yet. */
export const wordsGuessed = ({ technique, because, places, assume }: Deduction): number => {
  if (assume) return 30;
  if (technique === "last-cell") return 4;
  if (technique === "only-digit") return 4 + because.facts.size;
  const reasons = because.houses.length + because.rules.length;
  return 4 + 3 * reasons + (places.size > 0 ? 2 : 6);
};

/** How many digits a step leans on as gone that neither sight shows nor the steps before it in the same breath. */
const rememberedIn = (
  { because }: Deduction,
  knowledge: Knowledge,
  board: Board,
  said: readonly Deduction[],
): number => {
  const worked = isWorkedOut(knowledge, board);
  const isSaid = (cell: Cell, digit: number): boolean =>
    said.some(({ removes }) => has(removes.get(cell) ?? none, digit));
  let sum = 0;
  for (const [cell, digits] of because.facts)
    if (!isSettled(knowledge, cell))
      for (const digit of listOf(without(board.domains[cell]!, digits)))
        if (worked(cell, digit) && !isSaid(cell, digit)) sum++;
  return sum;
};

/** What a step costs by itself, guessed before it is proved, made small and put in words; `said` came in the same breath. */
export const guessOf = (
  step: Deduction,
  knowledge: Knowledge,
  board: Board,
  costs: Costs,
  words: number,
  pace: Pace,
  said: readonly Deduction[],
): number =>
  costs.thought * effortOf(step, knowledge) +
  speaking(words, pace) +
  costs.word * words +
  costs.remembered * rememberedIn(step, knowledge, board, said);
