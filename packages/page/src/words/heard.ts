import { counted, listed } from "@solvewright/engine";
import type { Ground } from "../solve/ground.ts";
import { cellIn } from "../solve/ground.ts";
import { marksAt, type Position } from "../solve/position.ts";

const marksHeard = (position: Position, cell: string): string[] => {
  const marks = marksAt(position, cell);
  return marks.length === 0 ? [] : [`${marks.length === 1 ? "mark" : "marks"} ${listed(marks)}`];
};

/** "maybe the 4 of row 3 of the mill". */
const spotsHeard = (ground: Ground, { spots }: Position, cell: string): string[] =>
  spots
    .filter(({ cells }) => cells.includes(cell))
    .map(({ digit, house }) => `maybe the ${digit} of ${ground.houses.get(house)!.said}`);

/** What stands in a cell. */
export const contentHeard = (ground: Ground, position: Position, name: string): string => {
  const { given } = cellIn(ground, name);
  if (given !== undefined) return `given ${given}`;
  const digit = position.settled[name];
  if (digit !== undefined) return String(digit);
  const small = [...marksHeard(position, name), ...spotsHeard(ground, position, name)];
  return small.length === 0 ? "empty" : small.join(", ");
};

/** A cell's name for those who hear the board: where it is, what stands there, what clues it bears. */
export const cellHeard = (ground: Ground, position: Position, name: string): string => {
  const { said, clues } = cellIn(ground, name);
  return [said, contentHeard(ground, position, name), ...clues].join(", ");
};

/** Cells by their number, or one by its content. */
export const cellsHeard = (cells: readonly string[]): string =>
  `${counted(cells.length)} ${cells.length === 1 ? "cell" : "cells"}`;
