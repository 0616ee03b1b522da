import {
  type Board,
  type Cell,
  canvasOf,
  cellNamed,
  compile,
  definitionOf,
  finished,
  type Judge,
  judgeOf,
  judging,
  type Puzzle,
  prove,
} from "@solvewright/engine";
import type { PuzzleData } from "@solvewright/press";

/** A puzzle with everything that help needs. */
export interface Helped {
  readonly board: Board;
  readonly about: ReturnType<typeof definitionOf>;
  readonly judge: Judge;
  /** By `Cell`; undefined where there is not exactly one. */
  readonly solution: ArrayLike<number> | undefined;
}

/** What was accepted when the page was made is accepted here. */
const puzzleOf = ({ title, grids, givens, rules }: PuzzleData): Puzzle => {
  const canvas = canvasOf(grids);
  const byCell = Object.entries(givens).map(([name, digit]) => [cellNamed(canvas, name)!, digit] as const);
  return { title, setters: [], grids, canvas, givens: new Map(byCell), rules, accepted: true };
};

const solutionOf = (board: Board): ArrayLike<number> | undefined => {
  const { verdict, solutions } = finished(judging(board));
  return verdict === "one" ? solutions[0] : undefined;
};

export const helpedOf = (data: PuzzleData): Helped => {
  const board = compile(puzzleOf(data));
  const about = definitionOf(board);
  return { board, about, judge: judgeOf(board, (claim) => prove(claim, about)), solution: solutionOf(board) };
};

export const cellOf = ({ board }: Helped, name: string): Cell => cellNamed(board.canvas, name)!;
