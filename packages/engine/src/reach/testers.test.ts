import { expect, test } from "vitest";
import { randomFrom } from "../random.ts";
import { fitted } from "./fit.ts";
import { rankCorrelation } from "./testers.ts";

// A worked example: ranks 1 2 3 4 5 against 2 1 4 3 5; 1 - 6 * 4 / (5 * 24) = 0.8 (Spearman's formula, common practice).
test("ranks are compared", () => {
  expect(rankCorrelation([10, 20, 30, 40, 50], [2, 1, 40, 30, 99])).toBeCloseTo(0.8);
  expect(rankCorrelation([1, 2, 3], [9, 8, 7])).toBeCloseTo(-1);
  expect(rankCorrelation([1, 1, 1], [1, 2, 3])).toBeUndefined();
});

const random = randomFrom(5);
const places = Array.from({ length: 60 }, () => ({ effort: 1 + random.below(9), open: random.below(6) }));

test("weights that made the times are found again", () => {
  const observed = places.map((place) => ({
    ...place,
    seconds: 4 + 2 * place.effort + 30 / Math.max(1, place.open),
  }));
  const { always, thought, looking } = fitted(observed);
  expect([always, thought, looking].map((weight) => Math.round(weight * 1e6) / 1e6)).toEqual([4, 2, 30]);
});

test("a weight that would be negative is left out", () => {
  const observed = places.map((place) => ({ ...place, seconds: 100 - 2 * place.effort }));
  const { always, thought, looking } = fitted(observed);
  expect(thought).toBe(0);
  expect(looking).toBeGreaterThanOrEqual(0);
  expect(always).toBeGreaterThan(0);
});
