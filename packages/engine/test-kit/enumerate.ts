import type { Board } from "../src/board/board.ts";
import { count, type Digits, digitsOf, listOf } from "../src/board/digits.ts";
import type { Cell } from "../src/puzzle/canvas.ts";
import type { Scope } from "../src/rules/contract.ts";
import type { Term } from "../src/terms/term.ts";
import { obeys } from "./obeys.ts";

/** Something that the digits of these cells, in this order, fulfil or not. */
export interface Check {
  readonly cells: readonly Cell[];
  readonly holds: (digits: readonly number[]) => boolean;
  /** No digit twice, which can be told before all are there. */
  readonly differ?: boolean;
}

const differ = (digits: readonly number[], all: Digits): boolean =>
  new Set(digits).size === digits.length && (count(all) !== digits.length || digitsOf(digits) === all);

const reads = (scope: Extract<Scope, { start: unknown }>, digits: readonly number[]): boolean => {
  let state: string | number | undefined = scope.start;
  for (const [index, digit] of digits.entries()) {
    if (state === undefined) return false;
    state = scope.next(state, digit, index);
  }
  return state !== undefined && scope.ok(state);
};

export const checkOfScope = (scope: Scope, domains: readonly Digits[]): Check => {
  const { cells } = scope;
  if ("holds" in scope) return scope;
  if ("start" in scope) return { cells, holds: (digits) => reads(scope, digits) };
  const all = scope.digits ?? (cells.reduce((set, cell) => set | domains[cell]!, 0) as Digits);
  return { cells, differ: true, holds: (digits) => differ(digits, all) };
};

export const checkOfTerm = (term: Term): Check => ({ cells: term.cells, holds: (digits) => obeys(term, digits) });

/** Rows, columns, regions and every rule by its scopes. */
export const checksOf = ({ houses, rules, domains }: Board): Check[] => [
  ...houses
    .filter(({ rule }) => !rule)
    .map(({ cells, digits }): Check => ({ cells, differ: true, holds: (all) => differ(all, digits) })),
  ...rules.flatMap(({ scopes }) => scopes.map((scope) => checkOfScope(scope, domains))),
];

/** Every filling of the cells from their domains that fulfils all checks, digit by digit; `digits` is by `Cell`. */
export function* fillings(
  cells: readonly Cell[],
  domains: readonly Digits[],
  checks: readonly Check[],
): Generator<readonly number[]> {
  const digits: number[] = domains.map(() => -1);
  const due = cells.map((cell, k) =>
    checks.filter((check) => check.cells.includes(cell) && check.cells.every((other) => cells.indexOf(other) <= k)),
  );
  const apart = cells.map((cell) => checks.filter((check) => check.differ && check.cells.includes(cell)));
  const fits = (k: number): boolean =>
    due[k]!.every((check) => check.holds(check.cells.map((cell) => digits[cell]!))) &&
    apart[k]!.every(({ cells: of }) => of.filter((cell) => digits[cell] === digits[cells[k]!]).length === 1);
  function* from(k: number): Generator<readonly number[]> {
    if (k === cells.length) {
      yield [...digits];
      return;
    }
    for (const digit of listOf(domains[cells[k]!]!)) {
      digits[cells[k]!] = digit;
      if (fits(k)) yield* from(k + 1);
    }
    digits[cells[k]!] = -1;
  }
  yield* from(0);
}
