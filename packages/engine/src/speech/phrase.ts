import type { Board } from "../board/board.ts";
import type { Knowledge } from "../board/knowledge.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { phrases } from "./english/lines/registry.ts";
import { nounsFor } from "./english/nouns.ts";
import type { Part, Style } from "./line.ts";

/** The grid that a step speaks of: that of its first house, else one that holds all that it concludes. */
const spokenGrid = ({ because, places, removes }: Deduction, board: Board): number | undefined => {
  const cells = [...places.keys(), ...removes.keys()];
  const holds = (grid: number | undefined): boolean =>
    grid !== undefined && cells.every((cell) => board.canvas.grids[cell]!.includes(grid));
  return because.houses.map((id) => board.house(id)?.grid).find(holds);
};

/**
 * The line of one step, in parts, as it is said in the state just before it; `previous` is the step before in the same
 * breath, so that what was just named need not be named again.
 */
export const phrase = (
  deduction: Deduction,
  before: Knowledge,
  board: Board,
  style: Style,
  previous?: Deduction,
): Part[] => {
  const say = phrases[deduction.technique];
  if (!say) throw new Error(`no words for ${deduction.technique}`);
  const nouns = nounsFor(board, style, spokenGrid(deduction, board));
  return say({ deduction, before, nouns, board, ...(previous ? { previous } : {}) });
};
