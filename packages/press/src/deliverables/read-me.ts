import { listed } from "@solvewright/engine";
import { creditOf } from "./credit.ts";
import type { Deliverable, Fact, Show } from "./show.ts";
import { oneLine } from "./texts.ts";
import { heldBack, needsOf, onChanges, type Waiting, waitingFor, wantedFor } from "./wanted.ts";

/** The facts that a file still waits for. */
export const lackedBy = (file: Deliverable, show: Show): Fact[] => {
  const wanted = wantedFor(show);
  return needsOf(file).filter((fact) => wanted[fact].length > 0);
};

const listing = (files: readonly Deliverable[]): string => {
  const lines = new Map(
    files.map(({ name, purpose, group }) => (group ? [group.names, group.purpose] : [name, purpose])),
  );
  const width = Math.max(...[...lines.keys()].map((name) => name.length));
  return [...lines].map(([name, purpose]) => `  ${name.padEnd(width)}  ${purpose}`).join("\n");
};

/** Longer lists than this say less than "everything". */
const most = 8;

const told = (waiting: readonly Waiting[]): string =>
  waiting
    .map(({ because, files }) => {
      const what = files.length > most ? "everything that is published" : listed(files);
      return `- ${because}\n  For ${what}.`;
    })
    .join("\n");

/** Rules that the file only describes are for the setter to vouch for. */
const notChecked = ({ board, plan }: Show): string[] =>
  plan.leftOut.map((id) => {
    const says = board.rule(id)!.kind.words(board.rule(id)!.instance).rule;
    return `Nothing here checks this rule, since the puzzle file does not say which digits obey it:\n  ${oneLine(says)}`;
  });

/** What lies in a pack, what each file is for and what is still wanted before it goes out. */
export const readMeOf = (files: readonly Deliverable[], show: Show): string => {
  const { puzzle } = show.board;
  const [held, wanted] = [heldBack(files, show), waitingFor(["credit", "link", "date"], files, show)];
  return `${[
    `${oneLine(puzzle.title)}, ${creditOf(puzzle, show.isChanged)}`,
    `Open puzzle.png and script.html first.`,
    listing(files),
    ...(held.length > 0 ? [`May not go out yet\n\n${told(held)}`] : []),
    ...(wanted.length > 0 ? [`Still wanted\n\n${told(wanted)}`] : []),
    ...notChecked(show),
    onChanges(show),
    "Edit any of these as you like: a file that you changed is kept when the pack is made again.",
  ].join("\n\n")}\n`;
};
