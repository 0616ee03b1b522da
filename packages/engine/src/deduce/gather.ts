import type { Board } from "../board/board.ts";
import { isBroken, type Knowledge } from "../board/knowledge.ts";
import type { Deduction, Technique } from "./deduction.ts";

/** Everything that these techniques find in this state, in the order of the ladder. */
export const gather = (knowledge: Knowledge, board: Board, ladder: readonly Technique[]): Deduction[] => {
  const found: Deduction[] = [];
  if (isBroken(knowledge)) return found;
  for (const technique of ladder) for (const deduction of technique.find(knowledge, board)) found.push(deduction);
  return found;
};
