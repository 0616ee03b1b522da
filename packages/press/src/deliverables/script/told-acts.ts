import { type Board, cellNamed, type Nouns, nounsFor, type Part, type PlanBeat } from "@solvewright/engine";
import { type LetteredReason, lettersOf } from "../../step/letters.ts";
import { type Entries, entriesOf } from "../entries.ts";
import { plural } from "../plural.ts";
import type { Show } from "../show.ts";
import { clock, timesOf } from "../times.ts";

/** One beat as it stands in a script: what is said, and what is put on the board. */
export interface ToldBeat {
  readonly n: number;
  readonly name: string;
  /** When it begins, as planned: "4:05". */
  readonly at: string;
  readonly seconds: number;
  /** An invitation to stop and look, said before it. */
  readonly pause?: string;
  readonly parts: readonly Part[];
  /** Its reasons in the order in which the line speaks of them, each by its place. */
  readonly reasons: readonly LetteredName[];
  readonly entries: Entries;
}

/** "b", a rule, "the cage of 5 at row 5, columns 3 and 4 of the yard". */
export interface LetteredName {
  readonly letter: string;
  readonly isRule: boolean;
  readonly name: string;
}

export interface ToldAct {
  readonly title: string;
  readonly open?: string;
  readonly close?: string;
  readonly beats: readonly ToldBeat[];
}

const nameOf = (of: LetteredReason["of"], { puzzle, canvas }: Board, nouns: Nouns): string => {
  const cells = (names: readonly string[]) => nouns.cells(names.map((name) => cellNamed(canvas, name)!));
  if ("cells" in of) return cells(of.cells);
  if ("so" in of) return cells([of.so]);
  if ("house" in of) return nouns.house(of.house);
  return "rule" in of ? nouns.rule(of.rule) : puzzle.grids.find(({ id }) => id === of.grid)!.called;
};

/** The reasons of a line, in the order in which it speaks of them, with the letters that they have in a picture. */
export const reasonsOf = (parts: readonly Part[], board: Board): LetteredName[] => {
  const nouns = nounsFor(board, "placed");
  return lettersOf(parts).map(({ letter, of }) => ({ letter, isRule: "rule" in of, name: nameOf(of, board, nouns) }));
};

type Said = Pick<PlanBeat, "n" | "seconds" | "pause">;

/** A show as it is told, the rules the first of its acts. */
export const toldActs = (show: Show): readonly ToldAct[] => {
  const { plan } = show;
  const { starts } = timesOf(plan);
  const told = ({ n, seconds, pause }: Said, name: string, parts: readonly Part[]) => {
    const about = {
      n,
      name,
      at: clock(starts.get(n)!),
      seconds: Math.round(seconds),
      parts,
      reasons: reasonsOf(parts, show.board),
    };
    return pause ? { ...about, pause: pause.say } : about;
  };
  const rules = plan.rules.lines.map((line): ToldBeat => {
    const parts: Part[] = [{ text: line.say, role: "plain" }];
    return { ...told(line, line.title, parts), entries: { enter: [], mark: [] } };
  });
  const acts = plan.acts.map(({ title, open, close, beats }): ToldAct => {
    const all = beats.map(
      (beat): ToldBeat => ({
        ...told(beat, beat.name, beat.parts),
        entries: entriesOf(show, beat),
      }),
    );
    return { title, open, close, beats: all };
  });
  return [{ title: plan.rules.title, beats: rules }, ...acts];
};

/** "11:24 in all: six rules and 45 beats." */
export const lengthOf = ({ plan }: Show): string => {
  const beats = plan.acts.reduce((sum, act) => sum + act.beats.length, 0);
  return `${clock(plan.seconds)} in all: ${plural(plan.rules.lines.length, "rule")} and ${plural(beats, "beat")}.`;
};
