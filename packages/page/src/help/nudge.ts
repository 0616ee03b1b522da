import {
  type Burst,
  burstFrom,
  digitsOf,
  finished,
  isSettled,
  type Knowledge,
  knownFrom,
  type Plan,
  textOf,
  withRemoved,
  wordsIn,
  wrongIn,
} from "@solvewright/engine";
import type { Ask, Nudge, Reply, Told } from "./asks.ts";
import { cellOf, type Helped } from "./helped.ts";
import { concludedIn, useSaid, whereSaid } from "./nudge-words.ts";
import { beatHere } from "./show-beats.ts";
import { toldOf } from "./told.ts";

/** A line is no longer than one breath (the speech rules); what does not fit is told by the next nudge. */
const mostWords = 40;

const inOneBreath = (helped: Helped, burst: Burst, state: Knowledge): Told => {
  for (let many = burst.length; many > 1; many--) {
    const told = toldOf(helped, burst.slice(0, many), state, "pointing");
    if (wordsIn(textOf(told.parts)) <= mostWords) return told;
  }
  return toldOf(helped, burst.slice(0, 1), state, "pointing");
};

const burstHere = (helped: Helped, state: Knowledge, eye: readonly string[]): Burst | undefined =>
  finished(burstFrom(state, helped.board, helped.judge, { eye: eye.map((name) => cellOf(helped, name)) }));

const nudgeOf = (helped: Helped, line: Told, before: Knowledge): Nudge => {
  const hinted = { board: helped.board, before, step: line.steps[0]! };
  const placed = line.steps.flatMap(({ places }) => Object.keys(places));
  const cells = placed.length > 0 ? placed : line.steps.flatMap(concludedIn);
  return { where: whereSaid(hinted), use: useSaid(hinted), line, cells };
};

/** What can be seen next from the solver's board: as the show says it where it fits, else worked out from here. */
export const nudgeFor = (
  helped: Helped,
  { position, eye, told }: Extract<Ask, { ask: "nudge" }>,
  plan: Plan | undefined,
): Reply => {
  const state = withTold(helped, knownFrom(helped.board, helped.solution, position), told);
  const wrong = wrongIn(helped.board, helped.solution, position).length;
  const isDone = helped.board.canvas.names.every((_, cell) => isSettled(state, cell));
  if (isDone || !helped.solution) return { reply: "nudge", wrong };
  const shown = plan && beatHere(helped, plan, state);
  const burst = shown ? undefined : burstHere(helped, state, eye);
  const line = shown ?? (burst && inOneBreath(helped, burst, state));
  return { reply: "nudge", wrong, ...(line ? { nudge: nudgeOf(helped, line, state) } : {}) };
};

const withTold = (helped: Helped, state: Knowledge, told: Readonly<Record<string, readonly number[]>>): Knowledge =>
  withRemoved(
    state,
    Object.entries(told).flatMap(([name, digits]): [number, ReturnType<typeof digitsOf>][] => {
      const cell = cellOf(helped, name);
      return isSettled(state, cell) ? [] : [[cell, digitsOf(digits)]];
    }),
  );
