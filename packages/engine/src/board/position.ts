import type { SpotFact } from "../deduce/step.ts";
import { type Cell, cellNamed } from "../puzzle/canvas.ts";
import type { Board } from "./board.ts";
import { type Digits, digitsOf, without } from "./digits.ts";
import { type Knowledge, startOf, withPlaced, withRemoved } from "./knowledge.ts";

/** What someone has on the board besides the givens, by cell names: the form of the board file. */
export interface Position {
  readonly settled: Readonly<Record<string, number>>;
  readonly marks: Readonly<Record<string, readonly number[]>>;
  readonly spots: readonly SpotFact[];
}

const cellOf = ({ canvas }: Board, name: string): Cell => cellNamed(canvas, name)!;

/** The only solution's digits by `Cell`; undefined where there is none or another, so that nobody can say what is wrong. */
type Only = ArrayLike<number> | undefined;

/** Settled cells whose digit is not the solution's, by name. */
export const wrongIn = (board: Board, solution: Only, { settled }: Pick<Position, "settled">): string[] =>
  Object.entries(settled).flatMap(([name, digit]) =>
    !solution || solution[cellOf(board, name)] === digit ? [] : [name],
  );

/**
 * Marks count as known where they hold the right digit and another: one that leaves it out is no fact, and a lone one
 * may be no more than a thought, which an answer must not confirm.
 */
const markedOut = (board: Board, solution: Only, { marks }: Position): [Cell, Digits][] =>
  Object.entries(marks).flatMap(([name, digits]): [Cell, Digits][] => {
    const cell = cellOf(board, name);
    const isKnown = digits.length > 1 && solution !== undefined && digits.includes(solution[cell]!);
    return isKnown ? [[cell, without(board.domains[cell]!, digitsOf(digits))]] : [];
  });

/** What a position establishes: the givens, the settled digits that are right, and marks that can be relied on. */
export const knownFrom = (board: Board, solution: Only, position: Position): Knowledge => {
  const wrong = new Set(wrongIn(board, solution, position));
  const right = Object.entries(position.settled).filter(([name]) => !wrong.has(name));
  const placed = withPlaced(
    startOf(board),
    board,
    right.map(([name, digit]) => [cellOf(board, name), digit]),
  );
  return withRemoved(
    placed,
    markedOut(board, solution, position).filter(([cell]) => !placed.settled[cell]),
  );
};
