import { type Board, introductions } from "@solvewright/engine";
import { missingIn } from "../page/page-data-of.ts";
import { creditOf } from "./credit.ts";
import type { Deliverable, Show } from "./show.ts";
import { oneLine } from "./texts.ts";

const notesOf = ({ puzzle }: Board, ids: readonly string[]): string[] => {
  const notes = puzzle.rules.flatMap(({ id, body }) => (ids.includes(id) && body.note ? [body.note] : []));
  return [...new Set(notes.map(oneLine))];
};

/** One sentence or two a kind, in the order in which the show introduces them, then what missing marks mean. */
const ours = (board: Board): string[] => [
  ...introductions(board).flatMap(({ say, ids }) => [oneLine(say), ...notesOf(board, ids)]),
  ...missingIn(board),
  ...(board.puzzle.grids.length > 1
    ? ["A rule that names no grid holds everywhere, from one grid into another too."]
    : []),
];

const leftOut = ({ board, plan }: Show): string[] =>
  plan.leftOut.map((id) => {
    const says = board.rule(id)!.kind.words(board.rule(id)!.instance).rule;
    return `Nothing here checks the rule "${oneLine(says)}": the file does not say which digits obey it.`;
  });

/** The rules as they can be published: the setter's own words where there are some, and ours, complete. */
export const rulesText: Deliverable = {
  name: "rules.txt",
  purpose: "The rules, to be published with the puzzle.",
  needs: ["credit", "link", "consent"],
  make: (show) => {
    const { board } = show;
    const { title, wording, notes } = board.puzzle;
    const full = ours(board).map((text) => `- ${text}`);
    return `${[
      `${oneLine(title)}\n${creditOf(board.puzzle, show.isChanged)}`,
      ...(wording ? [`The rules in the setter's words\n\n${wording.trim()}`] : []),
      `${wording ? "The rules in full" : "The rules"}\n\n${full.join("\n")}`,
      ...(notes ? [`The setter adds\n\n${notes.trim()}`] : []),
      ...leftOut(show),
    ].join("\n\n")}\n`;
  },
};
