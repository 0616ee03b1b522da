import {
  type Board,
  type Deduction,
  definitionOf,
  finished,
  judging,
  limitsOf,
  type Plan,
  prove,
  runningOrder,
} from "@solvewright/engine";

const planOf = (board: Board): Plan => {
  const about = definitionOf(board);
  const limits = (deduction: Deduction) => limitsOf(board, about, deduction);
  return finished(runningOrder(board, (claim) => prove(claim, about), { limits })).plan;
};

/** Where a solver may stand: what the first part of the running order settles, then what is to come, in its order. */
export interface Stand {
  readonly settled: Readonly<Record<string, number>>;
  readonly toCome: readonly (readonly [cell: string, digit: number])[];
}

/** `part`: how much of the board is settled, from 0 to 1. */
export const standOf = (board: Board, part: number): Stand => {
  const [solution] = finished(judging(board)).solutions;
  const placed = planOf(board).steps.flatMap(({ places }) => Object.entries(places));
  const known = new Set(placed.map(([cell]) => cell));
  const others = board.canvas.names.flatMap((name, cell): [string, number][] =>
    known.has(name) || board.givens.has(cell) ? [] : [[name, solution![cell]!]],
  );
  const all = [...placed, ...others];
  const many = Math.floor(all.length * part);
  return { settled: Object.fromEntries(all.slice(0, many)), toCome: all.slice(many) };
};
