import {
  afterStep,
  cellNamed,
  digitsOf,
  has,
  isSettled,
  type Knowledge,
  type Plan,
  type Step,
} from "@solvewright/engine";
import type { Told } from "./asks.ts";
import type { Helped } from "./helped.ts";
import { stepsOf } from "./steps-of.ts";

type ByName<T> = Readonly<Record<string, T>>;
const byCell = <T>({ board }: Helped, of: ByName<T>): [number, T][] =>
  Object.entries(of).map(([name, value]) => [cellNamed(board.canvas, name)!, value]);

/** Whether the solver's board shows all that the step leans on, and what it gives is new there. */
const fits = (helped: Helped, { because, places, removes }: Step, state: Knowledge): boolean => {
  const { facts, spots, relations, recalls } = because;
  if (spots.length + relations.length + recalls.length > 0) return false;
  const isShown = ([cell, digits]: [number, readonly number[]]): boolean =>
    (state.possible[cell]! & ~digitsOf(digits)) === 0 && (digits.length > 1 || isSettled(state, cell));
  const isNew =
    byCell(helped, places).some(([cell]) => !isSettled(state, cell)) ||
    byCell(helped, removes).some(([cell, digits]) => digits.some((digit) => has(state.possible[cell]!, digit)));
  return isNew && byCell(helped, facts).every(isShown);
};

const fitsAll = (helped: Helped, steps: readonly Step[], start: Knowledge): boolean => {
  let state = start;
  return steps.every((step) => {
    const fitting = fits(helped, step, state);
    state = afterStep(state, helped.board, step);
    return fitting;
  });
};

/** The first beat of the show that can be told from the board as it stands, in the show's own words. */
export const beatHere = (helped: Helped, plan: Plan, state: Knowledge): Told | undefined => {
  for (const beat of plan.acts.flatMap(({ beats }) => beats)) {
    const steps = stepsOf(plan, beat);
    if (fitsAll(helped, steps, state)) return { parts: beat.parts, placed: beat.placed, steps };
  }
  return undefined;
};
