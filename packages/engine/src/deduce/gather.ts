import type { Board } from "../board/board.ts";
import { isBroken, type Knowledge } from "../board/knowledge.ts";
import type { Deduction, Technique } from "./deduction.ts";

/** Everything that these techniques find in this state, in the order of the ladder. */
export const gather = (knowledge: Knowledge, board: Board, ladder: readonly Technique[]): Deduction[] =>
  isBroken(knowledge) ? [] : ladder.flatMap((technique) => [...technique.find(knowledge, board)]);
