import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { isBroken, isSolved, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { isNew } from "../deduce/chain.ts";
import type { Technique } from "../deduce/deduction.ts";
import { gather } from "../deduce/gather.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Puzzle } from "../puzzle/puzzle.ts";
import type { Random } from "../random.ts";

/** Whether these techniques lead to the end, each asked only when those before it have nothing more to say. */
export const isSolvedBy = (board: Board, ladder: readonly Technique[]): boolean => {
  let knowledge = startOf(board);
  for (let k = 0; k < ladder.length && !isSolved(knowledge); k++) {
    const fresh = gather(knowledge, board, [ladder[k]!]).filter((step) => isNew(step, knowledge));
    if (fresh.length === 0) continue;
    for (const step of fresh) knowledge = after(knowledge, board, step);
    if (isBroken(knowledge)) return false;
    k = -1;
  }
  return isSolved(knowledge);
};

/** A puzzle without givens and a filling that obeys it, by `Cell`. */
export interface Sown {
  readonly puzzle: Puzzle;
  readonly solution: ArrayLike<number>;
}

/** Takes givens away by chance as long as the ladder still leads to the end. */
export const dug = ({ puzzle, solution }: Sown, ladder: readonly Technique[], random: Random): Puzzle => {
  const board = compile(puzzle);
  let givens = new Map<Cell, number>(Array.from(solution, (digit, cell) => [cell, digit]));
  for (const cell of random.shuffled([...givens.keys()])) {
    const fewer = new Map([...givens].filter(([other]) => other !== cell));
    if (isSolvedBy({ ...board, givens: fewer }, ladder)) givens = fewer;
  }
  return { ...puzzle, givens };
};
