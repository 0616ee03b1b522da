import type { SpotFact } from "../deduce/step.ts";
import { type Cell, cellNamed } from "../puzzle/canvas.ts";
import type { Board } from "./board.ts";
import { type Digits, digitsOf, only, without } from "./digits.ts";
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

/** Cells whose marks leave the solution's digit out, by name. */
export const wrongMarksIn = (board: Board, solution: Only, { marks }: Pick<Position, "marks">): string[] =>
  Object.entries(marks).flatMap(([name, digits]) =>
    !solution || digits.length === 0 || digits.includes(solution[cellOf(board, name)]!) ? [] : [name],
  );

const isRight = (board: Board, solution: ArrayLike<number>, { digit, cells }: SpotFact): boolean =>
  cells.some((name) => solution[cellOf(board, name)] === digit);

/** Spot marks that leave the place of the solution's digit out. */
export const wrongSpotsIn = (board: Board, solution: Only, { spots }: Pick<Position, "spots">): SpotFact[] =>
  solution ? spots.filter((spot) => spot.cells.length > 0 && !isRight(board, solution, spot)) : [];

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

/** The same for spot marks: the digit is gone from the other cells of that house. */
const spottedOut = (board: Board, solution: Only, { spots }: Position): [Cell, Digits][] =>
  spots.flatMap((spot): [Cell, Digits][] => {
    const house = board.house(spot.house);
    const isKnown = spot.cells.length > 1 && solution !== undefined && isRight(board, solution, spot);
    if (!house || !isKnown) return [];
    const named = new Set(spot.cells.map((name) => cellOf(board, name)));
    return house.cells.filter((cell) => !named.has(cell)).map((cell) => [cell, only(spot.digit)]);
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
  const out = [...markedOut(board, solution, position), ...spottedOut(board, solution, position)];
  return withRemoved(
    placed,
    out.filter(([cell]) => !placed.settled[cell]),
  );
};

/** Settled cells that see a given or one another with the same digit, by name: plainly wrong, whatever the solution. */
export const clashingIn = (board: Board, { settled }: Pick<Position, "settled">): string[] => {
  const digits = new Map(board.givens);
  for (const [name, digit] of Object.entries(settled)) digits.set(cellOf(board, name), digit);
  return Object.entries(settled).flatMap(([name, digit]) =>
    board.sees[cellOf(board, name)]!.some((other) => digits.get(other) === digit) ||
    (board.givens.get(cellOf(board, name)) ?? digit) !== digit
      ? [name]
      : [],
  );
};
