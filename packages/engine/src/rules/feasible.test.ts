import { describe, expect, test } from "vitest";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import { type Digits, digitsOf, listOf } from "../board/digits.ts";
import type { State } from "../terms/term.ts";
import type { Scope } from "./contract.ts";
import { feasibilityIn, isFeasible } from "./feasible.ts";

const differ = (digits: readonly number[]): boolean => new Set(digits).size === digits.length;

/** What a scope says of a filling, read off its form and nothing else. */
const obeys = (scope: Scope, filling: readonly number[]): boolean => {
  const digits = scope.cells.map((cell) => filling[cell]!);
  if ("different" in scope) return differ(digits);
  if ("holds" in scope) return scope.holds(digits);
  let state: State | undefined = scope.start;
  for (const [k, digit] of digits.entries()) state = state === undefined ? state : scope.next(state, digit, k);
  return state !== undefined && scope.ok(state);
};

const fillings = (domains: readonly Digits[]): number[][] =>
  domains.reduce<number[][]>(
    (all, domain) => all.flatMap((filling) => listOf(domain).map((digit) => [...filling, digit])),
    [[]],
  );

const adding = (cells: readonly number[], sum: number): Scope => ({
  cells,
  start: 0,
  next: (sofar, digit) => (sofar as number) + digit,
  ok: (sofar) => sofar === sum,
});
/** Weighs by place, so that the order of the cells matters. */
const weighing = (cells: readonly number[], sum: number): Scope => ({
  cells,
  start: 0,
  next: (sofar, digit, index) => ((sofar as number) > sum ? undefined : (sofar as number) + (index + 1) * digit),
  ok: (sofar) => sofar === sum,
});

const randomScope = (random: Random, cells: readonly number[]): Scope => {
  const some = random.shuffled(cells).slice(0, 2 + random.below(cells.length - 1));
  const forms: (() => Scope)[] = [
    () => ({ cells: some, different: true }),
    () => ({ cells: some.slice(0, 2), holds: ([a, b]) => a! - b! === random.below(1) + 1 }),
    () => ({ cells: some.slice(0, 3), holds: (digits) => digits.reduce((a, b) => a + b) === 7 }),
    () => adding(some, random.below(16)),
    () => weighing(some, random.below(30)),
  ];
  const made = random.pick(forms)();
  return made;
};

test("agrees with trying every filling", () => {
  const random = randomFrom(11);
  const seen = { yes: 0, no: 0 };
  for (let k = 0; k < 1500; k++) {
    const domains = Array.from({ length: 4 }, () =>
      digitsOf(random.shuffled([0, 1, 2, 3, 4]).slice(0, 1 + random.below(4))),
    );
    const scopes = Array.from({ length: 1 + random.below(3) }, () => randomScope(random, [0, 1, 2, 3]));
    const wanted = fillings(domains).some((filling) => scopes.every((scope) => obeys(scope, filling)));
    seen[wanted ? "yes" : "no"]++;
    expect(isFeasible(scopes, { domains }), `${k}`).toBe(wanted);
  }
  expect(Math.min(seen.yes, seen.no)).toBeGreaterThan(200);
});

describe("is bounded", () => {
  const all = digitsOf(Array.from({ length: 25 }, (_, k) => k + 1));
  const domains = Array.from({ length: 60 }, () => all);
  const cells = domains.map((_, cell) => cell);
  const remembering: Scope = { cells, start: "", next: (row, digit) => `${row} ${digit}`, ok: () => false };

  test("what can't be tried out counts as something that can be met", () =>
    expect(isFeasible([remembering], { domains })).toBe(true));
  test("more cells than digits are seen at once", () =>
    expect(isFeasible([{ cells, different: true }, remembering], { domains })).toBe(false));
  test("the tries of a file are shared out", () => {
    let asked = 0;
    const counting: Scope = {
      ...remembering,
      next: (row, digit) => {
        asked++;
        return `${row} ${digit}`;
      },
    };
    const isMet = feasibilityIn({ domains });
    for (let k = 0; k < 100; k++) expect(isMet([counting])).toBe(true);
    expect(asked).toBeLessThan(500_000);
  });
});
