import { showTimes } from "../take/show-times.ts";
import { creditOf } from "./credit.ts";
import { rulesInFull } from "./rules-in-full.ts";
import type { Deliverable, Show } from "./show.ts";
import { oneLine } from "./texts.ts";
import { clock } from "./times.ts";

/** In the setter's words or in ours, and what the setter adds. */
const rulesOf = ({ board }: Show): string => {
  const { wording, notes } = board.puzzle;
  return [wording?.trim() ?? rulesInFull(board).join("\n"), ...(notes ? [notes.trim()] : [])].join("\n");
};

const chaptersOf = (show: Show): string =>
  showTimes(show)
    .chapters.map(({ title, from }) => `${clock(from)} ${oneLine(title)}`)
    .join("\n");

/** The text under a video: credit, rules, chapters; nothing in it gives the way in away. */
export const description: Deliverable = {
  name: "description.txt",
  purpose: "The text under the video: credit, rules and chapters.",
  needs: ["credit", "link", "consent"],
  make: (show) => {
    const { puzzle } = show.board;
    return `${oneLine(puzzle.title)}, ${creditOf(puzzle, show.isChanged)}.\n\nThe rules\n${rulesOf(show)}\n\nChapters\n${chaptersOf(show)}\n`;
  },
};
