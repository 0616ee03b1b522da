import type { Board } from "../board/board.ts";
import { isSettled, type Knowledge } from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction } from "./deduction.ts";

/** What one step costs an audience to follow, in thoughts: a newcomer's step costs about one. */
const perLevel = [0, 1, 2.4, 5, 9, 14];
/** One more house, clue or open cell to keep an eye on. */
const perHouse = 0.35;
const perRule = 0.4;
const perOpenFact = 0.45;
/** A settled cell is there to be seen. */
const perSettledFact = 0.06;
/** Seeing many different digits around one cell is slower than finding one digit's place. */
const perDigitSeen = 0.22;

export const effortOf = (deduction: Deduction, knowledge: Knowledge): number => {
  const { facts, houses, rules, relations } = deduction.because;
  const open = [...facts.keys()].filter((cell) => !isSettled(knowledge, cell)).length;
  const looking = deduction.technique === "only-digit" ? perDigitSeen * facts.size : 0;
  return (
    perLevel[deduction.level]! +
    perHouse * houses.length +
    perRule * (rules.length + relations.length) +
    perOpenFact * open +
    perSettledFact * (facts.size - open) +
    looking
  );
};

/** How far the eye travels from where it was: nothing to a neighbour or in the same house, more elsewhere. */
export const travel = (board: Board, from: readonly Cell[], to: readonly Cell[]): number => {
  if (from.length === 0 || to.length === 0) return 0;
  const share = board.houses.some(({ cells }) => cells.includes(to[0]!) && from.some((cell) => cells.includes(cell)));
  const sameGrid = board.canvas.grids[to[0]!]!.some((grid) =>
    from.some((cell) => board.canvas.grids[cell]!.includes(grid)),
  );
  return share ? 0 : sameGrid ? 0.8 : 2.5;
};
