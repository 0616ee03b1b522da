import { type Board, introductions } from "@solvewright/engine";
import { missingIn } from "../page/page-data-of.ts";
import type { Show } from "./show.ts";
import { oneLine } from "./texts.ts";

const notesOf = ({ puzzle }: Board, ids: readonly string[]): string[] => {
  const notes = puzzle.rules.flatMap(({ id, body }) => (ids.includes(id) && body.note ? [body.note] : []));
  return [...new Set(notes.map(oneLine))];
};

/** One sentence or two a kind, in the order in which the show introduces them, then what missing marks mean. */
export const rulesInFull = (board: Board): string[] => [
  ...introductions(board).flatMap(({ say, ids }) => [oneLine(say), ...notesOf(board, ids)]),
  ...missingIn(board),
  ...(board.puzzle.grids.length > 1
    ? ["A rule that names no grid holds everywhere, from one grid into another too."]
    : []),
];

/** The same sentences without what is added, each with the number of the beat that introduces it. */
export const rulesNumbered = ({
  board,
  plan,
}: Pick<Show, "board" | "plan">): { readonly n: number; readonly say: string }[] => {
  const sentences = new Map(introductions(board).map(({ rule, say }) => [rule, say]));
  return plan.rules.lines.map(({ n, rule, say }) => ({ n, say: sentences.get(rule) ?? say }));
};
