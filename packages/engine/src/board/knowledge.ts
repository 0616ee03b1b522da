import type { Cell } from "../puzzle/canvas.ts";
import type { Board } from "./board.ts";
import { both, type Digits, isOne, only, without } from "./digits.ts";
import { keyOfRelated, type Related } from "./related.ts";

/**
 * What is established about the digits: by `Cell`, what is still possible, and whether the cell is settled (given or
 * placed). A cell with one digit left is not settled until a step places it; sight starts from there.
 */
export interface Knowledge {
  readonly possible: readonly Digits[];
  readonly settled: readonly boolean[];
  /** Relations that steps have concluded; those that a clue states by itself are not among them. */
  readonly related?: readonly Related[];
}

export const at = (knowledge: Knowledge, cell: Cell): Digits => knowledge.possible[cell]!;
export const isSettled = (knowledge: Knowledge, cell: Cell): boolean => knowledge.settled[cell]!;

/** Settles cells and lets sight act: the digit leaves every cell that each of them sees. */
export const withPlaced = (
  knowledge: Knowledge,
  board: Board,
  places: Iterable<readonly [Cell, number]>,
): Knowledge => {
  const possible = [...knowledge.possible];
  const settled = [...knowledge.settled];
  for (const [cell, digit] of places) {
    possible[cell] = both(possible[cell]!, only(digit));
    settled[cell] = true;
    for (const seen of board.sees[cell]!) possible[seen] = without(possible[seen]!, only(digit));
  }
  return { ...knowledge, possible, settled };
};

export const withRemoved = (knowledge: Knowledge, removes: Iterable<readonly [Cell, Digits]>): Knowledge => {
  const possible = [...knowledge.possible];
  for (const [cell, digits] of removes) possible[cell] = without(possible[cell]!, digits);
  return { ...knowledge, possible };
};

export const isRelated = ({ related = [] }: Knowledge, relation: Related): boolean =>
  related.some((other) => keyOfRelated(other) === keyOfRelated(relation));

export const withRelated = (knowledge: Knowledge, relations: readonly Related[]): Knowledge =>
  relations.length === 0 ? knowledge : { ...knowledge, related: [...(knowledge.related ?? []), ...relations] };

/** The start: all digits that the grids allow, the givens settled and seen. */
export const startOf = (board: Board): Knowledge =>
  withPlaced({ possible: board.domains, settled: board.domains.map(() => false) }, board, board.givens);

export const countSettled = ({ settled }: Knowledge): number => settled.filter(Boolean).length;
export const countOpen = ({ settled }: Knowledge): number => settled.filter((is) => !is).length;
export const isSolved = (knowledge: Knowledge): boolean => knowledge.settled.every(Boolean);
/** A cell that has nothing left: the premises contradict each other. */
export const isBroken = (knowledge: Knowledge): boolean => knowledge.possible.includes(0 as Digits);
export const digitAt = (knowledge: Knowledge, cell: Cell): number | undefined =>
  isSettled(knowledge, cell) && isOne(at(knowledge, cell)) ? 31 - Math.clz32(at(knowledge, cell)) : undefined;
