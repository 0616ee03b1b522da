import { type Digits, has, listOf } from "../board/digits.ts";
import type { Scope } from "../rules/contract.ts";
import type { Premises } from "./premises.ts";
import { completeDigits } from "./prepared.ts";
import type { Values } from "./session.ts";

type ReadScope = Extract<Scope, { start: unknown }>;

const readsWell = ({ start, next, ok }: ReadScope, digits: readonly number[]): boolean => {
  let state: ReadScope["start"] | undefined = start;
  for (const [index, digit] of digits.entries()) {
    state = next(state, digit, index);
    if (state === undefined) return false;
  }
  return ok(state);
};

/** Whether these values obey a scope, taken word for word. */
export const obeysScope = (scope: Scope, values: Values, domains: readonly Digits[]): boolean => {
  const digits = scope.cells.map((cell) => values[cell]!);
  if ("holds" in scope) return scope.holds(digits);
  if ("start" in scope) return readsWell(scope, digits);
  const complete = listOf(completeDigits(scope, domains) as Digits);
  return new Set(digits).size === digits.length && complete.every((digit) => digits.includes(digit));
};

/** Whether these values are an assignment of the touched cells that obeys the premises, taken word for word. */
export const obeys = (values: Values, premises: Premises, domains: readonly Digits[]): boolean =>
  premises.touched.every((cell) => values[cell]! >= 0 && has(premises.start[cell] as Digits, values[cell]!)) &&
  premises.houses.every(({ prepared }) => obeysScope(prepared.scope, values, domains)) &&
  premises.scopes.every(({ scope }) => obeysScope(scope, values, domains)) &&
  premises.spots.every(({ digit, cells }) => cells.some((cell) => values[cell] === digit));
