import { introductions } from "@solvewright/engine";
import { creditOf } from "./credit.ts";
import type { Deliverable, Show } from "./show.ts";

const leftOut = ({ plan }: Show): string =>
  plan.leftOut.length === 0
    ? ""
    : `\nNo digit rows are given for ${plan.leftOut.join(" and ")}: its sentence is printed, but nothing here checks it.\n`;

/** The rules as they can be published: the setter's own words where there are some, and ours, one sentence a kind. */
export const rulesText: Deliverable = {
  name: "rules.txt",
  purpose: "The rules, to be published with the puzzle.",
  text: (show) => {
    const { puzzle } = show.board;
    const ours = introductions(show.board).map(({ say }) => `- ${say}`);
    const theirs = puzzle.wording ? `In the setter's words:\n\n${puzzle.wording.trim()}\n\nIn ours:\n\n` : "";
    const notes = puzzle.notes ? `\nThe setter notes: ${puzzle.notes.trim()}\n` : "";
    return `${puzzle.title}\n${creditOf(puzzle)}\n\n${theirs}${ours.join("\n")}\n${notes}${leftOut(show)}`;
  },
};
