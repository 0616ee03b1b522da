import { describe, expect, test } from "vitest";
import { instanceOn, obeysScope, resolvedOn } from "../../../test-kit/instance.ts";
import { cage } from "./cage.ts";

const row = (cells: number): string => (cells === 1 ? "r1c1" : `r1c1-r1c${cells}`);

/** The sets of this many digits from 1 to 9. */
const setsOf = (cells: number, from = 1): number[][] =>
  cells === 0
    ? [[]]
    : Array.from({ length: 10 - from }, (_, k) => from + k).flatMap((digit) =>
        setsOf(cells - 1, digit + 1).map((rest) => [digit, ...rest]),
      );

/** How many sets of digits fill a cage of these cells and this sum, judged by its definition. */
const combinations = (cells: number, sum: number): number => {
  const scopes = cage.scopes(instanceOn(cage, { cells: row(cells), sum }, 9));
  return setsOf(cells).filter((set) => scopes.every((scope) => obeysScope(scope, (cell) => set[cell]!))).length;
};

const canBe = (cells: number, sum: number): boolean => !("faults" in resolvedOn(cage, { cells: row(cells), sum }, 9));
const sums = Array.from({ length: 46 }, (_, k) => k);
const sumsOf = (cells: number): number[] => sums.filter((sum) => canBe(cells, sum));

// Counted for this project by two methods, a search and an answer-set solver; the coefficients of the Gaussian binomial
// [9 choose k] (PUBLISHED.md, "Tables behind the rules").
describe("cages on the digits 1 to 9", () => {
  test("129 pairs of a number of cells and a sum occur", () => {
    expect([1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap(sumsOf)).toHaveLength(129);
  });

  test.each([
    [2, 3, "1 1 2 2 3 3 4 4 4 3 3 2 2 1 1"],
    [3, 6, "1 1 2 3 4 5 7 7 8 8 8 7 7 5 4 3 2 1 1"],
    [4, 10, "1 1 2 3 5 6 8 9 11 11 12 11 11 9 8 6 5 3 2 1 1"],
    [5, 15, "1 1 2 3 5 6 8 9 11 11 12 11 11 9 8 6 5 3 2 1 1"],
    [6, 21, "1 1 2 3 4 5 7 7 8 8 8 7 7 5 4 3 2 1 1"],
    [7, 28, "1 1 2 2 3 3 4 4 4 3 3 2 2 1 1"],
  ])("%i cells from %i up: %s combinations", (cells, least, expected) => {
    expect(sumsOf(cells)[0]).toBe(least);
    expect(
      sumsOf(cells)
        .map((sum) => combinations(cells, sum))
        .join(" "),
    ).toBe(expected);
  });

  test.each([
    [2, [3, 4, 16, 17]],
    [3, [6, 7, 23, 24]],
    [4, [10, 11, 29, 30]],
    [5, [15, 16, 34, 35]],
    [6, [21, 22, 38, 39]],
    [7, [28, 29, 41, 42]],
  ])("%i cells have one combination for %j", (cells, expected) => {
    expect(sumsOf(cells).filter((sum) => combinations(cells, sum) === 1)).toEqual(expected);
  });

  test("a cage without a sum only keeps its digits apart", () => {
    const scopes = cage.scopes(instanceOn(cage, { cells: "r1c1 r2c2" }, 4));
    expect(scopes).toEqual([{ cells: [0, 5], different: true }]);
  });
});
