import type { Board } from "../board/board.ts";
import type { Knowledge } from "../board/knowledge.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { phrases } from "./english/lines/registry.ts";
import { nounsFor } from "./english/nouns.ts";
import type { Part, Style } from "./line.ts";

/** The line of one step, in parts, as it is said in the state just before it. */
export const phrase = (deduction: Deduction, before: Knowledge, board: Board, style: Style): Part[] => {
  const say = phrases[deduction.technique];
  if (!say) throw new Error(`no words for ${deduction.technique}`);
  return say({ deduction, before, nouns: nounsFor(board, style), board });
};
