import { listed } from "@solvewright/engine";
import { creditOf } from "./credit.ts";
import type { Deliverable, Fact, Show } from "./show.ts";
import { oneLine } from "./texts.ts";
import { wantedFor } from "./wanted.ts";

/** The facts that a file still waits for. */
export const lackedBy = ({ needs }: Deliverable, { board }: Show): Fact[] => {
  const wanted = wantedFor(board.puzzle);
  return needs.filter((fact) => wanted[fact].length > 0);
};

const listing = (files: readonly Deliverable[]): string => {
  const width = Math.max(...files.map(({ name }) => name.length));
  return files.map(({ name, purpose }) => `  ${name.padEnd(width)}  ${purpose}`).join("\n");
};

const waiting = (files: readonly Deliverable[], show: Show): string[] =>
  Object.entries(wantedFor(show.board.puzzle)).flatMap(([fact, sentences]) => {
    const names = files.filter(({ needs }) => needs.includes(fact as Fact)).map(({ name }) => name);
    return sentences.map((sentence) => `- ${oneLine(sentence)}\n  For ${listed(names)}.`);
  });

/** What lies in a pack, what each file is for and what is still wanted before it goes out. */
export const readMeOf = (files: readonly Deliverable[], show: Show): string => {
  const { puzzle } = show.board;
  const wanted = waiting(files, show);
  return `${[
    `${oneLine(puzzle.title)}, ${creditOf(puzzle)}`,
    `Open puzzle.png and script.md first.`,
    listing(files),
    ...(wanted.length > 0 ? [`Still wanted\n\n${wanted.join("\n")}`] : []),
    "Edit any of these as you like: a file that you changed is kept when the pack is made again.",
  ].join("\n\n")}\n`;
};
