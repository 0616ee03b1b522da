import type { Board } from "../../board/board.ts";
import type { Reach, Stretch, Viewer } from "../../reach/reach.ts";
import { capital, counted, listed } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

const viewers = ["", "newcomers", "casual solvers", "regulars", "keen solvers", "experts"];

/** Who watches, by level from 1: "regulars". */
export const viewersSaid = (level: number): string => viewers[level]!;

const wayLine = (open: number, { level, settled }: Viewer): string =>
  settled === 0 ? `${viewersSaid(level)} find no digit` : `${viewersSaid(level)} come to ${settled} of ${open} digits`;

/** How far each level comes that does not get through: "Newcomers come to 12 of 45 digits and casual solvers to 30." */
const shortLine = ({ open, viewers }: Reach): string[] => {
  const short = viewers.filter(({ through }) => !through);
  return short.length === 0 ? [] : [`${capital(listed(short.map((viewer) => wayLine(open, viewer))))}.`];
};

const throughLine = ({ viewers }: Reach): string => {
  const first = viewers.find(({ through }) => through);
  if (!first) return "Plain reasoning does not get through at any level.";
  if (first.level === 1) return "Everybody who knows the rules gets through alone.";
  return `${capital(viewersSaid(first.level))} get through alone.`;
};

const openSaid = (open: number): string =>
  open === 0
    ? "no easy step is open there"
    : `${counted(open)} easy ${open === 1 ? "step is" : "steps are"} open there`;

const placeSaid = (board: Board, { cell, digit, open, level }: Stretch): string =>
  `the ${digit} in ${nounsFor(board, "placed").cell(cell)}: ${openSaid(open)}, and it takes a step of level ${level}`;

/** Each likely pause in a few words, the longest first: "The 4 in row 6, column 4: level 2, two easy steps open". */
export const pausesSaid = (board: Board, { way, pauses }: Reach): string[] =>
  pauses.map((at) => {
    const { cell, digit, open, level } = way[at]!;
    const easy = open === 0 ? "" : `, ${counted(open)} easy ${open === 1 ? "step" : "steps"} open`;
    return `The ${digit} in ${nounsFor(board, "placed").cell(cell)}: level ${level}${easy}`;
  });

const pauseLine = (board: Board, { way, pauses }: Reach): string => {
  const longest = way[pauses[0] ?? -1];
  return longest
    ? `The longest pause is likely before ${placeSaid(board, longest)}.`
    : "No place stands out as a longer pause than the others.";
};

/** Who gets through alone and where they are likely to pause, in a few plain sentences. */
export const reachLines = (board: Board, reach: Reach): string[] => [
  throughLine(reach),
  ...shortLine(reach),
  pauseLine(board, reach),
];
