import { expect, test } from "vitest";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import { type Digits, digitsOf, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Equation, equationPropagator } from "./equation.ts";

interface Given extends Equation {
  /** By `Cell`: the cells that it may not be like. */
  readonly peers: readonly (readonly Cell[])[];
  /** By `Cell`. */
  readonly domains: readonly Digits[];
}

const given = (random: Random): Given => {
  const cells = [...Array(2 + random.below(4)).keys()];
  const often = 1 + random.below(4);
  const apart = cells.flatMap((a) => cells.filter((b) => a < b && random.below(4) < often).map((b) => [a, b]));
  const weightings = [[1], [1, -1], [1, 1, -1, 2], [-1, 10, 3]];
  const weighting = random.pick(weightings);
  const weights = cells.map(() => random.pick(weighting));
  const top = random.pick([4, 6, 9, 31]);
  const domains = cells.map(() => digitsOf(Array.from({ length: 1 + random.below(6) }, () => random.below(top + 1))));
  const equals = domains.reduce((sum, digits, k) => sum + random.pick(listOf(digits)) * weights[k]!, 0);
  const peers = cells.map((cell) => apart.flatMap(([a, b]) => (a === cell ? [b!] : b === cell ? [a!] : [])));
  return { cells, weights, equals, peers, domains };
};

/** What enumeration leaves by way of the sum and of cells that differ wherever `apart` says so; empty where it leaves none. */
const supported = (
  { cells, weights, equals, domains }: Given,
  apart: (a: Cell, b: Cell) => boolean,
): readonly Digits[] => {
  let rows: number[][] = [[]];
  for (const cell of cells)
    rows = rows.flatMap((row) =>
      listOf(domains[cell]!).flatMap((digit) =>
        row.some((other, before) => other === digit && apart(before, cell)) ? [] : [[...row, digit]],
      ),
    );
  const right = rows.filter((row) => row.reduce((sum, digit, k) => sum + digit * weights[k]!, 0) === equals);
  return cells.map((cell) => digitsOf(right.map((row) => row[cell]!)));
};

const narrowed = ({ cells, weights, equals, peers, domains }: Given): readonly Digits[] => {
  const now = Int32Array.from(domains);
  const propagate = equationPropagator({ cells, weights, equals }, peers, now);
  const keep = (cell: Cell, digits: number): boolean => {
    now[cell]! &= digits;
    return now[cell] !== 0;
  };
  for (let last = ""; last !== now.join(); ) {
    last = now.join();
    if (!propagate({ at: (cell) => now[cell] as Digits, keep })) return domains.map(() => 0 as Digits);
  }
  return [...now] as Digits[];
};

const isWithin = (set: readonly Digits[], other: readonly Digits[]): boolean =>
  set.every((digits, cell) => (digits & ~other[cell]!) === 0);

test("keeps what enumeration supports, and no digit that the sum alone rules out", () => {
  let moreThanSum = 0;
  for (let seed = 1; seed <= 1500; seed++) {
    const one = given(randomFrom(seed));
    const found = narrowed(one);
    const bySum = supported(one, () => false);
    const said = JSON.stringify({ ...one, domains: one.domains.map(listOf) });
    expect(
      isWithin(
        supported(one, (a, b) => one.peers[a]!.includes(b)),
        found,
      ),
      said,
    ).toBe(true);
    expect(isWithin(found, bySum), said).toBe(true);
    if (!isWithin(bySum, found)) moreThanSum++;
  }
  expect(moreThanSum).toBeGreaterThan(200);
});

test("is exact where all cells differ", () => {
  for (let seed = 1; seed <= 1500; seed++) {
    const any = given(randomFrom(seed));
    const one = { ...any, peers: any.cells.map((cell) => any.cells.filter((other) => other !== cell)) };
    expect(narrowed(one), JSON.stringify({ ...one, domains: one.domains.map(listOf) })).toEqual(
      supported(one, () => true),
    );
  }
});
