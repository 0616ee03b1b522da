import { type Cell, digitsOf, type Knowledge, startOf, withPlaced, withRemoved } from "@solvewright/engine";
import type { Position } from "../solve/position.ts";
import { cellOf, type Helped } from "./helped.ts";

/** Settled cells whose digit is not right. */
export const wrongIn = (helped: Helped, { settled }: Position): string[] =>
  Object.entries(settled).flatMap(([name, digit]) =>
    helped.solution && helped.solution[cellOf(helped, name)] !== digit ? [name] : [],
  );

type Removal = readonly [Cell, ReturnType<typeof digitsOf>];

/**
 * Marks count as known where they hold the right digit and another: one that leaves it out is no fact, and a lone one
 * may be no more than a thought, which help must not confirm.
 */
const markedOut = (helped: Helped, { marks }: Position): Removal[] =>
  Object.entries(marks).flatMap(([name, digits]): Removal[] => {
    const cell = cellOf(helped, name);
    if (digits.length < 2 || !helped.solution || !digits.includes(helped.solution[cell]!)) return [];
    return [[cell, (~digitsOf(digits) & helped.board.domains[cell]!) as Removal[1]]];
  });

/** What the solver's board establishes: the givens, the settled digits that are right, and marks that can be relied on. */
export const knownIn = (helped: Helped, position: Position): Knowledge => {
  const wrong = new Set(wrongIn(helped, position));
  const right = Object.entries(position.settled).filter(([name]) => !wrong.has(name));
  const { board } = helped;
  const placed = withPlaced(
    startOf(board),
    board,
    right.map(([name, digit]) => [cellOf(helped, name), digit]),
  );
  return withRemoved(
    placed,
    markedOut(helped, position).filter(([cell]) => !placed.settled[cell]),
  );
};
