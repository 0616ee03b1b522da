import { count, type Digits, listOf } from "../board/digits.ts";
import type { Scope } from "../rules/contract.ts";
import { canMatch } from "./matching.ts";
import type { Group, Problem, Reading, Small } from "./problem.ts";
import { readable } from "./reading.ts";

const single = (digits: number): boolean => digits !== 0 && (digits & (digits - 1)) === 0;

/** Takes settled digits out of the rest of a group, and gives a digit its last place in a complete one. */
const narrowGroup = ({ cells, digits }: Group, domains: Int32Array): boolean => {
  let once = 0;
  let twice = 0;
  for (const cell of cells) {
    const own = domains[cell]!;
    if (own === 0) return false;
    if (single(own)) {
      for (const other of cells) if (other !== cell) domains[other]! &= ~own;
    }
  }
  for (const cell of cells) {
    twice |= once & domains[cell]!;
    once |= domains[cell]!;
    if (domains[cell] === 0) return false;
  }
  if (digits !== undefined) {
    if ((digits & ~once) !== 0) return false;
    const last = once & ~twice & digits;
    if (last !== 0) for (const cell of cells) if ((domains[cell]! & last) !== 0) domains[cell]! &= last;
  }
  return canMatch(cells.map((cell) => domains[cell]!));
};

/** Keeps of two or three cells the digits that some choice of the others goes with. */
const narrowSmall = ({ cells, holds }: Small, domains: Int32Array): boolean => {
  const lists = cells.map((cell) => listOf(domains[cell] as Digits));
  const kept = cells.map(() => 0);
  const choose = (chosen: number[]): void => {
    const index = chosen.length;
    if (index < cells.length) for (const digit of lists[index]!) choose([...chosen, digit]);
    else if (holds(chosen)) for (const [k, digit] of chosen.entries()) kept[k]! |= 1 << digit;
  };
  choose([]);
  for (const [k, cell] of cells.entries()) domains[cell]! &= kept[k]!;
  return cells.every((cell) => domains[cell] !== 0);
};

const narrowReading = ({ cells, numbered, apart }: Reading, domains: Int32Array): boolean => {
  const kept = readable(numbered, cells.map((cell) => domains[cell]!), apart);
  if (!kept) return false;
  for (const [k, cell] of cells.entries()) domains[cell]! &= kept[k]!;
  return true;
};

interface Rule {
  readonly cells: readonly number[];
  readonly narrow: (domains: Int32Array) => boolean;
}

const rulesOf = ({ groups, smalls, readings }: Problem): Rule[] => [
  ...groups.map((group) => ({ cells: group.cells, narrow: (domains: Int32Array) => narrowGroup(group, domains) })),
  ...smalls.map((small) => ({ cells: small.cells, narrow: (domains: Int32Array) => narrowSmall(small, domains) })),
  ...readings.map((reading) => ({ cells: reading.cells, narrow: (domains: Int32Array) => narrowReading(reading, domains) })),
];

/** A choice to branch on: a cell's digits, or the places of a digit in a complete group. */
interface Choice {
  readonly options: readonly (readonly [cell: number, digit: number])[];
}

const fewestOptions = ({ groups }: Problem, domains: Int32Array, weights: Float64Array): Choice | undefined => {
  let best: Choice | undefined;
  let bestScore = Number.POSITIVE_INFINITY;
  for (const [cell, digits] of domains.entries()) {
    if (single(digits)) continue;
    const score = count(digits as Digits) / weights[cell]!;
    if (score < bestScore) [best, bestScore] = [{ options: listOf(digits as Digits).map((digit) => [cell, digit]) }, score];
  }
  if (!best || best.options.length === 2) return best;
  for (const { cells, digits } of groups) {
    if (digits === undefined) continue;
    for (const digit of listOf(digits)) {
      const places = cells.filter((cell) => ((domains[cell]! >>> digit) & 1) === 1);
      if (places.length < 2 || places.length >= best.options.length) continue;
      best = { options: places.map((cell) => [cell, digit]) };
    }
  }
  return best;
};

/** More than this many nodes is too big; after the first share of them the search begins again with failure weights. */
export const usualBudget = { nodes: 20_000, restartAfter: 2_000 };
export type Budget = typeof usualBudget;

export type Found = { readonly found: "assignment"; readonly digits: Int32Array } | { readonly found: "none" } | { readonly found: "too big" };

/** An assignment within `start` that obeys the whole problem, or none, or too big for the budget. */
export const assignmentOf = (problem: Problem, start: Int32Array, budget: Budget = usualBudget): Found => {
  const rules = rulesOf(problem);
  const watching: number[][] = problem.cells.map((_, cell) => rules.flatMap((rule, r) => (rule.cells.includes(cell) ? [r] : [])));
  const weights = new Float64Array(problem.cells.length).fill(1);
  let nodes = 0;
  let limit = budget.restartAfter;

  const settle = (domains: Int32Array, due: Set<number>): boolean => {
    for (const r of due) {
      due.delete(r);
      const rule = rules[r]!;
      const before = rule.cells.map((cell) => domains[cell]!);
      if (!rule.narrow(domains)) {
        for (const cell of rule.cells) weights[cell]! += 1;
        return false;
      }
      for (const [k, cell] of rule.cells.entries()) if (domains[cell] !== before[k]) for (const other of watching[cell]!) due.add(other);
    }
    return domains.every((digits) => digits !== 0);
  };

  const search = (domains: Int32Array, due: Set<number>): Int32Array | undefined | "stop" => {
    if (++nodes > limit) return "stop";
    if (!settle(domains, due)) return undefined;
    const choice = fewestOptions(problem, domains, weights);
    if (!choice) return domains;
    for (const [cell, digit] of choice.options) {
      const next = domains.slice();
      next[cell] = 1 << digit;
      const found = search(next, new Set(watching[cell]!));
      if (found !== undefined) return found;
    }
    return undefined;
  };

  const all = (): Set<number> => new Set(rules.keys());
  let found = search(start.slice(), all());
  if (found === "stop" && limit < budget.nodes) {
    limit = budget.nodes;
    found = search(start.slice(), all());
  }
  if (found === "stop") return { found: "too big" };
  return found ? { found: "assignment", digits: found } : { found: "none" };
};

/** Whether an assignment obeys the plain scopes: a second look, so that no fault in the search is taken for a proof. */
export const obeys = (problem: Problem, digitAt: (cell: number) => number): boolean =>
  problem.scopes.every((scope: Scope) => {
    const digits = scope.cells.map((cell) => digitAt(problem.placeOf.get(cell)!));
    if ("different" in scope) return new Set(digits).size === digits.length;
    if ("holds" in scope) return scope.holds(digits);
    let state: number | string | undefined = scope.start;
    for (const [index, digit] of digits.entries()) {
      state = scope.next(state, digit, index);
      if (state === undefined) return false;
    }
    return scope.ok(state);
  });
