import type { Cell } from "../src/puzzle/canvas.ts";
import type { Scope } from "../src/rules/contract.ts";
import { obeysScope } from "./instance.ts";

/** Judges the digits as far as the cell that was filled last. */
type Judge = (digitAt: (cell: Cell) => number) => boolean;

/** A scope is judged when its last cell is filled; no repeats, at each of its cells. */
const judgesOf = (cells: readonly Cell[], k: number, scopes: readonly Scope[]): Judge[] => {
  const [cell, before] = [cells[k]!, cells.slice(0, k)];
  return scopes
    .filter((scope) => scope.cells.includes(cell))
    .flatMap((scope): Judge[] => {
      const earlier = before.filter((other) => scope.cells.includes(other));
      if ("different" in scope) return [(digitAt) => earlier.every((other) => digitAt(other) !== digitAt(cell))];
      return earlier.length === scope.cells.length - 1 ? [(digitAt) => obeysScope(scope, digitAt)] : [];
    });
};

/** Every row of these digits, in cell order, that obeys the scopes: tried digit by digit, nothing foreseen. */
export function* rowsObeying(
  cells: readonly Cell[],
  scopes: readonly Scope[],
  digits: readonly number[],
): Generator<readonly number[]> {
  const filled = new Map<Cell, number>();
  const digitAt = (cell: Cell): number => filled.get(cell)!;
  const judges = cells.map((_, k) => judgesOf(cells, k, scopes));
  function* from(k: number): Generator<readonly number[]> {
    if (k === cells.length) return yield cells.map(digitAt);
    for (const digit of digits) {
      filled.set(cells[k]!, digit);
      if (judges[k]!.every((judge) => judge(digitAt))) yield* from(k + 1);
    }
  }
  yield* from(0);
}

/** 1 to `last`. */
export const upTo = (last: number): number[] => Array.from({ length: last }, (_, k) => k + 1);
