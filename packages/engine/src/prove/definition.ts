import type { Board } from "../board/board.ts";
import type { Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";

/** No digit twice; each of `digits` once where it is complete. */
export interface HouseDefinition {
  readonly cells: readonly Cell[];
  readonly digits: Digits;
  readonly complete: boolean;
}

export interface RuleDefinition {
  /** All cells that it brings in; empty for a whole-grid rule, which binds only what else is touched. */
  readonly cells: readonly Cell[];
  readonly scopes: readonly Scope[];
  readonly wholeGrid: boolean;
}

/** All that the prover knows of a puzzle: plain data and each rule's plain definition. Givens are not in here. */
export interface Definition {
  /** By `Cell`. */
  readonly names: readonly string[];
  readonly cellOf: ReadonlyMap<string, Cell>;
  /** By `Cell`: the digits that all its grids allow. */
  readonly domains: readonly Digits[];
  /** By id. */
  readonly houses: ReadonlyMap<string, HouseDefinition>;
  /** By id. */
  readonly rules: ReadonlyMap<string, RuleDefinition>;
}

const ruleOf = ({ cells, scopes, wholeGrid }: RuleDefinition): RuleDefinition => ({
  cells: wholeGrid ? [] : [...new Set([...cells, ...scopes.flatMap((scope) => scope.cells)])],
  scopes,
  wholeGrid,
});

const known = new WeakMap<Board, Definition>();

/** What the prover may see of a board; the same object for the same board, since proofs remember by it. */
export const definitionOf = (board: Board): Definition => {
  const before = known.get(board);
  if (before) return before;
  const definition: Definition = {
    names: board.canvas.names,
    cellOf: new Map(board.canvas.names.map((name, cell) => [name, cell])),
    domains: board.domains,
    houses: new Map(board.houses.map(({ id, cells, digits, complete }) => [id, { cells, digits, complete }])),
    rules: new Map(board.rules.map((rule) => [rule.id, ruleOf(rule)])),
  };
  known.set(board, definition);
  return definition;
};
