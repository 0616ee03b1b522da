import { introductions } from "@solvewright/engine";
import { showTimes } from "../take/show-times.ts";
import { creditOf } from "./credit.ts";
import type { Deliverable, Show } from "./show.ts";
import { oneLine } from "./texts.ts";
import { clock } from "./times.ts";

const rulesOf = ({ board }: Show): string =>
  board.puzzle.wording?.trim() ??
  introductions(board)
    .map(({ say }) => oneLine(say))
    .join("\n");

const chaptersOf = (show: Show): string =>
  showTimes(show)
    .chapters.map(({ title, from }) => `${clock(from)} ${oneLine(title)}`)
    .join("\n");

/** The text under a video: credit, rules, chapters; nothing in it gives the way in away. */
export const description: Deliverable = {
  name: "description.txt",
  purpose: "The text under the video: credit, rules and chapters.",
  needs: ["credit", "link", "date", "consent"],
  make: (show) => {
    const { puzzle } = show.board;
    return `${oneLine(puzzle.title)}, ${creditOf(puzzle, show.isChanged)}.\n\nThe rules\n${rulesOf(show)}\n\nChapters\n${chaptersOf(show)}\n`;
  },
};
