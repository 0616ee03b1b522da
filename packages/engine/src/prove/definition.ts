import type { Board } from "../board/board.ts";
import type { Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";

export interface HouseDefinition {
  readonly cells: readonly Cell[];
  readonly digits: Digits;
  readonly complete: boolean;
}

export interface RuleDefinition {
  readonly cells: readonly Cell[];
  readonly scopes: readonly Scope[];
  /** It binds only cells that the rest of the claim touches. */
  readonly wholeGrid: boolean;
}

/** A puzzle as the prover sees it: cells, houses and the plain definitions of the rules; no givens, no reasoning. */
export interface Definition {
  readonly names: readonly string[];
  readonly cellOf: ReadonlyMap<string, Cell>;
  /** By `Cell`: the digits that its grids allow. */
  readonly domains: readonly Digits[];
  readonly houses: ReadonlyMap<string, HouseDefinition>;
  readonly rules: ReadonlyMap<string, RuleDefinition>;
}

export const definitionOf = ({ canvas, domains, houses, rules }: Board): Definition => ({
  names: canvas.names,
  cellOf: new Map(canvas.names.map((name, cell) => [name, cell])),
  domains,
  houses: new Map(houses.map((house) => [house.id, house])),
  rules: new Map(rules.map((rule) => [rule.id, rule])),
});

/** The same puzzle with more digits allowed in one cell: whether a claim needs what its grids leave out. */
export const withWiderCell = (about: Definition, cell: Cell, digits: Digits): Definition => ({
  ...about,
  domains: about.domains.map((own, other) => (other === cell ? digits : own)),
});
