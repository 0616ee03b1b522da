import { describe, expect, test } from "vitest";
import { randomFrom } from "../../test-kit/random.ts";
import { type Digits, digitsOf, listOf } from "../board/digits.ts";
import { productsNear } from "./products.ts";
import { canAllDiffer, canCountThemselves, canKeepApart, extremesOf, sumsOf, sumsOfDifferent } from "./reachable.ts";

/** Every row of digits that the domains allow. */
const rowsOf = ([first, ...others]: readonly Digits[]): number[][] =>
  first === undefined ? [[]] : listOf(first).flatMap((digit) => rowsOf(others).map((row) => [digit, ...row]));

const differ = (row: readonly number[]): boolean => new Set(row).size === row.length;
const ascending = (values: Iterable<number>): number[] => [...new Set(values)].sort((a, b) => a - b);
const upToLeastAbove = (limit: number, values: readonly number[]): number[] => {
  const above = values.find((value) => value > limit);
  return values.filter((value) => value <= limit || value === above);
};

/** The number itself where it is there, else what stands next to it. */
const nearestTo = (wanted: number, values: readonly number[]): (number | undefined)[] => {
  const sorted = ascending(values);
  if (sorted.includes(wanted)) return [wanted];
  return [sorted.findLast((value) => value < wanted), sorted.find((value) => value > wanted)];
};

describe("what cells can come to is what plain enumeration finds", () => {
  test.each(Array.from({ length: 60 }, (_, seed) => seed))("domains of seed %i", (seed) => {
    const random = randomFrom(seed);
    const sorts = Array.from({ length: 1 + random.below(3) }, () =>
      digitsOf(random.shuffled([0, 1, 2, 3, 4, 5, 6]).slice(0, 1 + random.below(5))),
    );
    const domains = Array.from({ length: 1 + random.below(5) }, () => random.pick(sorts));
    const rows = rowsOf(domains);
    const sums = ascending(rows.map((row) => row.reduce((sum, digit) => sum + digit, 0)));
    const different = rows.filter(differ);
    const sumsApart = ascending(different.map((row) => row.reduce((sum, digit) => sum + digit, 0)));
    const products = ascending(different.map((row) => row.reduce((product, digit) => product * digit, 1)));
    const limit = random.below(25);
    expect(sumsOf(domains)).toEqual(sums);
    expect(canAllDiffer(domains)).toBe(different.length > 0);
    expect(ascending(sumsOfDifferent(domains, limit))).toEqual(upToLeastAbove(limit, sumsApart));
    expect(nearestTo(limit, productsNear(domains, limit))).toEqual(nearestTo(limit, products));
    const count = (row: readonly number[], digit: number) => row.filter((other) => other === digit).length;
    expect(canCountThemselves(domains)).toBe(rows.some((row) => row.every((digit) => count(row, digit) === digit)));
    const isApart = (row: readonly number[]) => row.every((a, k) => row.slice(0, k).every((b) => Math.abs(a - b) > 1));
    expect(canKeepApart(domains)).toBe(rows.some(isApart));
    if (different.length === 0) return;
    const { least, most } = extremesOf(domains);
    const add = (row: readonly number[]) => row.reduce((sum, digit) => sum + digit, 0);
    expect([add(least), add(most)]).toEqual([sumsApart[0], sumsApart.at(-1)]);
  });

  test("what is tried is bounded; what would take longer is taken to be possible between the extremes", () => {
    const all = Array.from({ length: 25 }, (_, k) => k + 1);
    const domains = all.map((k) => digitsOf(all.filter((digit) => (digit * k) % 26 > 3)));
    let spent = 0;
    const spend = (tries: number): boolean => {
      spent += tries;
      return true;
    };
    const { least, most } = extremesOf(domains.slice(0, 13));
    const add = (digits: readonly number[]) => digits.reduce((sum, digit) => sum + digit, 0);
    const sums = ascending(sumsOfDifferent(domains.slice(0, 13), 325, spend));
    expect(sums).toEqual(Array.from({ length: add(most) - add(least) + 1 }, (_, k) => add(least) + k));
    expect(productsNear(domains.slice(0, 13), 6_746_328_388_800, spend)).toEqual([6_746_328_388_800]);
    expect(canCountThemselves(domains, spend)).toBe(true);
    expect(spent).toBeLessThan(4 * 201_000);
    expect(canCountThemselves(domains, () => false)).toBe(true);
  });

  test("a cage of 25 different digits has one sum", () => {
    const domains = Array.from({ length: 25 }, () => digitsOf(Array.from({ length: 25 }, (_, k) => k + 1)));
    expect([...sumsOfDifferent(domains, 325)]).toEqual([325]);
  });
});
