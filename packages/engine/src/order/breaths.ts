import { type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { fitsOneBreath } from "./beats.ts";
import type { Spoken } from "./line.ts";
import { marked } from "./marking.ts";
import type { OrderedBeat } from "./running-order.ts";
import type { Voice } from "./voice.ts";

/** The steps of each beat with what they recall, as they are said. */
export const spokenOf = (beats: readonly OrderedBeat[]): Spoken[][] => {
  const all = beats.flatMap(({ steps }) => steps.map(({ deduction }) => deduction));
  return beats.map(({ steps }) =>
    steps.map(({ deduction, recalls }) => ({ deduction, again: recalls.map((earlier) => all[earlier]!) })),
  );
};

/** How many of the first steps are said in one breath, one at least. */
const firstBreath = (steps: readonly Spoken[], from: Knowledge, voice: Voice): number => {
  let many = steps.length;
  while (many > 1 && !fitsOneBreath(steps.slice(0, many), from, voice)) many--;
  return many;
};

/** Cuts beats that their recalls make too long; a step that is too long with what it recalls must do with less of it. */
const cut = (
  spoken: readonly (readonly Spoken[])[],
  voice: Voice,
  most: Map<Deduction, number>,
): readonly (readonly Deduction[])[] => {
  const { board } = voice;
  let knowledge = startOf(board);
  return spoken.flatMap((steps) => {
    const many = firstBreath(steps, knowledge, voice);
    const [first] = steps;
    if (many === 1 && first!.again.length > 0 && !fitsOneBreath([first!], knowledge, voice))
      most.set(first!.deduction, first!.again.length - 1);
    for (const { deduction } of steps) knowledge = after(knowledge, board, deduction);
    const said = steps.map(({ deduction }) => deduction);
    return many < said.length ? [said.slice(0, many), said.slice(many)] : [said];
  });
};

/** The beats with their marks and recalls, each of them short enough to be said in one breath with all that it recalls. */
export const inBreaths = (voice: Voice, beats: readonly (readonly Deduction[])[]): OrderedBeat[] => {
  const most = new Map<Deduction, number>();
  for (let now = beats; ; ) {
    const ordered = marked(voice.board, now, most);
    const before = [...most.values()].join();
    const next = cut(spokenOf(ordered), voice, most);
    if (next.length === now.length && [...most.values()].join() === before) return ordered;
    now = next;
  }
};
