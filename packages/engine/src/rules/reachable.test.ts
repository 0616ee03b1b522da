import { describe, expect, test } from "vitest";
import { randomFrom } from "../../test-kit/random.ts";
import { type Digits, digitsOf, listOf } from "../board/digits.ts";
import { canAllDiffer, canCountThemselves, productsOfDifferent, sumsOf, sumsOfDifferent } from "./reachable.ts";

/** Every row of digits that the domains allow. */
const rowsOf = ([first, ...others]: readonly Digits[]): number[][] =>
  first === undefined ? [[]] : listOf(first).flatMap((digit) => rowsOf(others).map((row) => [digit, ...row]));

const differ = (row: readonly number[]): boolean => new Set(row).size === row.length;
const ascending = (values: Iterable<number>): number[] => [...new Set(values)].sort((a, b) => a - b);
const upToLeastAbove = (limit: number, values: readonly number[]): number[] => {
  const above = values.find((value) => value > limit);
  return values.filter((value) => value <= limit || value === above);
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
    expect(ascending(productsOfDifferent(domains, limit))).toEqual(upToLeastAbove(limit, products));
    const count = (row: readonly number[], digit: number) => row.filter((other) => other === digit).length;
    expect(canCountThemselves(domains)).toBe(rows.some((row) => row.every((digit) => count(row, digit) === digit)));
  });

  test("a cage of 25 different digits has one sum", () => {
    const domains = Array.from({ length: 25 }, () => digitsOf(Array.from({ length: 25 }, (_, k) => k + 1)));
    expect([...sumsOfDifferent(domains, 325)]).toEqual([325]);
  });
});
