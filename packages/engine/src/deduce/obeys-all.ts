import type { Board } from "../board/board.ts";
import { min } from "../board/digits.ts";
import { at, type Knowledge } from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";

/** Whether digits, in the order of the scope's cells, obey it. */
export const obeysScope = (scope: Scope, digits: readonly number[]): boolean => {
  if ("different" in scope) return new Set(digits).size === digits.length;
  if ("holds" in scope) return scope.holds(digits);
  let state: number | string | undefined = scope.start;
  for (const [index, digit] of digits.entries()) {
    state = scope.next(state, digit, index);
    if (state === undefined) return false;
  }
  return scope.ok(state);
};

/**
 * Whether a filled board obeys every house and every rule. A chain may settle all cells without ever leaning on a clue;
 * where the puzzle has no solution that clue may be the one that the filling breaks.
 */
export const obeysAll = (board: Board, knowledge: Knowledge): boolean => {
  const digits = (cells: readonly Cell[]): number[] => cells.map((cell) => min(at(knowledge, cell)));
  return (
    board.houses.every(({ cells }) => new Set(digits(cells)).size === cells.length) &&
    board.rules.every(({ scopes }) => scopes.every((scope) => obeysScope(scope, digits(scope.cells))))
  );
};
