import type { Board } from "../board/board.ts";
import { has, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Random } from "../random.ts";
import type { Solution } from "../search/run.ts";
import { solve } from "../search/solve.ts";

/** So many digits are set by chance before the rest is searched for; fewer where that leads nowhere soon. */
const sown = [8, 5, 3, 0];
const nodes = 2000;

/** Digits in cells drawn by chance, no two of which see each other with the same digit. */
const seeds = (board: Board, many: number, random: Random): Map<Cell, number> => {
  const digits = new Map<Cell, number>();
  for (const cell of random.shuffled([...board.domains.keys()]).slice(0, many)) {
    const digit = random.pick(listOf(board.domains[cell]!));
    if (!board.sees[cell]!.some((other) => digits.get(other) === digit)) digits.set(cell, digit);
  }
  return digits;
};

/** A filling of the board drawn by chance, by `Cell`; undefined where none is found soon. */
export const filled = (board: Board, random: Random): Solution | undefined => {
  for (const many of sown) {
    const givens = seeds(board, many, random);
    const isPossible = [...givens].every(([cell, digit]) => has(board.domains[cell]!, digit));
    const [solution] = isPossible ? solve({ ...board, givens }, { limit: 1, nodes }).solutions : [];
    if (solution) return solution;
  }
  return undefined;
};
