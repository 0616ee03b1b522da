import { creditOf } from "./credit.ts";
import { rulesInFull } from "./rules-in-full.ts";
import type { Deliverable } from "./show.ts";
import { oneLine } from "./texts.ts";

/** The rules as they can be published: the setter's own words where there are some, and ours, complete. */
export const rulesText: Deliverable = {
  name: "rules.txt",
  purpose: "The rules, to be published with the puzzle.",
  needs: ["credit", "link", "consent"],
  make: ({ board, isChanged }) => {
    const { title, wording, notes } = board.puzzle;
    const full = rulesInFull(board).map((text) => `- ${text}`);
    return `${[
      `${oneLine(title)}\n${creditOf(board.puzzle, isChanged)}`,
      ...(wording ? [`The rules in the setter's words\n\n${wording.trim()}`] : []),
      `${wording ? "The rules in full" : "The rules"}\n\n${full.join("\n")}`,
      ...(notes ? [`The setter adds\n\n${notes.trim()}`] : []),
    ].join("\n\n")}\n`;
  },
};
