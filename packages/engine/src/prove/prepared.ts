import { count, type Digits, either, none } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";
import type { Constraint, Places } from "./constraint.ts";
import type { Definition, HouseDefinition, RuleDefinition } from "./definition.ts";
import { different } from "./different.ts";
import { type Reading, readingOf } from "./reading.ts";
import { table } from "./table.ts";
import { fixedTotal } from "./total.ts";

/** A scope made ready for search: constraints that any proof can share, or a reading that each proof looks along. */
export interface PreparedScope {
  readonly scope: Scope;
  readonly constraints: readonly Constraint[];
  readonly reading?: Reading;
  /** Where every digit must be placed. */
  readonly places?: Places;
}

export interface PreparedHouse extends HouseDefinition {
  readonly prepared: PreparedScope;
}
export interface PreparedRule extends RuleDefinition {
  readonly prepared: readonly PreparedScope[];
  /** What its cells add up to in every assignment that it permits, where that is one number. */
  total(): number | undefined;
}

/** What proofs of one puzzle share. It only remembers work: no verdict depends on what was proved before. */
export interface Prepared {
  readonly definition: Definition;
  readonly cellOf: ReadonlyMap<string, Cell>;
  house(id: string): PreparedHouse | undefined;
  rule(id: string): PreparedRule | undefined;
}

const unionOf = (cells: readonly Cell[], domains: readonly Digits[]): Digits =>
  cells.reduce<Digits>((all, cell) => either(all, domains[cell]!), none);

/** The digits that a `different` scope must place: all where it has as many cells as digits, else none. */
export const completeDigits = (scope: Extract<Scope, { different: true }>, domains: readonly Digits[]): number => {
  const digits = scope.digits ?? unionOf(scope.cells, domains);
  return count(digits) === scope.cells.length ? digits : 0;
};

const group = (scope: Scope, cells: readonly Cell[], complete: number): PreparedScope => ({
  scope,
  constraints: different(cells, complete),
  ...(complete === 0 ? {} : { places: { cells, digits: complete } }),
});

export const preparedScope = (scope: Scope, domains: readonly Digits[]): PreparedScope => {
  if ("different" in scope) return group(scope, scope.cells, completeDigits(scope, domains));
  if ("holds" in scope) return { scope, constraints: [table(scope.cells, scope.holds, domains)] };
  return { scope, constraints: [], reading: readingOf(scope, domains) };
};

const preparedHouse = (house: HouseDefinition): PreparedHouse => {
  const { cells, digits, complete } = house;
  return { ...house, prepared: group({ cells, different: true, digits }, cells, complete ? digits : 0) };
};

const preparedRule = (rule: RuleDefinition, domains: readonly Digits[]): PreparedRule => {
  const prepared = rule.scopes.map((scope) => preparedScope(scope, domains));
  let total: { readonly is: number | undefined } | undefined;
  const totalOnce = (): number | undefined => {
    total ??= { is: fixedTotal(rule, prepared, domains) };
    return total.is;
  };
  return { ...rule, prepared, total: totalOnce };
};

/** Makes each value when it is first asked for. */
const lazily = <From, To>(from: ReadonlyMap<string, From>, make: (value: From) => To) => {
  const made = new Map<string, To>();
  return (id: string): To | undefined => {
    const before = made.get(id);
    const value = from.get(id);
    if (before !== undefined || value === undefined) return before;
    const after = make(value);
    made.set(id, after);
    return after;
  };
};

const prepare = (definition: Definition): Prepared => ({
  definition,
  cellOf: definition.cellOf,
  house: lazily(definition.houses, preparedHouse),
  rule: lazily(definition.rules, (rule) => preparedRule(rule, definition.domains)),
});

const known = new WeakMap<Definition, Prepared>();

export const preparedOf = (definition: Definition): Prepared => {
  let prepared = known.get(definition);
  if (!prepared) {
    prepared = prepare(definition);
    known.set(definition, prepared);
  }
  return prepared;
};
