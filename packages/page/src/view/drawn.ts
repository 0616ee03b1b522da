import type { Part, Step } from "@solvewright/engine";
import { type LetteredReason, lettersOf, type View } from "@solvewright/press";
import type { State } from "../app/state.ts";
import type { Told } from "../help/asks.ts";
import type { Ground } from "../solve/ground.ts";

/** The lines that are told now, if any: those of the nudge's last grade, or those of an answer. */
export const toldNow = ({ nudge, why, panel }: State): readonly Told[] => {
  if (nudge?.nudge && nudge.grade === 3) return [nudge.nudge.line];
  return panel === "why" ? (why?.answer?.lines ?? []) : [];
};

/** Letters tell reasons apart; one alone needs none. */
export const lettersIn = (lines: readonly Told[]): readonly LetteredReason[] => {
  const letters = lettersOf(lines.flatMap(({ parts }): readonly Part[] => parts));
  return letters.length > 1 ? letters : [];
};

const ringed = ({ nudge }: State): readonly string[] =>
  nudge?.nudge && nudge.grade === 2 ? (nudge.nudge.line.steps[0]?.because.rules ?? []) : [];

/** What the board shows in this state. */
export const viewOf = (state: State, { data }: Ground): View => {
  const lines = toldNow(state);
  const step: readonly Step[] = lines.flatMap(({ steps }) => steps);
  const { lens, check, chosen, position } = state;
  return {
    written: position,
    chosen,
    sentences: false,
    ...(step.length > 0 ? { step, letters: lettersIn(lines) } : { ringed: ringed(state) }),
    ...(lens === undefined ? {} : { lens: data.puzzle.grids[lens]!.id }),
    ...(check?.where ? { slips: check.wrong } : {}),
  };
};
