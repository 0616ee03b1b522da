import { introductions } from "@solvewright/engine";
import { creditOf } from "./credit.ts";
import type { Deliverable } from "./show.ts";
import { clock, timesOf } from "./times.ts";

/** The description under a video: credit, rules, chapters; nothing in it gives the way in away. */
export const description: Deliverable = {
  name: "description.txt",
  purpose: "The text under the video: credit, rules and chapters.",
  text: ({ board, plan }) => {
    const { puzzle } = board;
    const rules =
      puzzle.wording?.trim() ??
      introductions(board)
        .map(({ say }) => say)
        .join("\n");
    const times = timesOf(plan).chapters.map(({ title, from }) => `${clock(from)} ${title}`);
    return `${puzzle.title}, ${creditOf(puzzle)}.\n\nThe rules\n${rules}\n\nChapters (planned)\n${times.join("\n")}\n`;
  },
};
