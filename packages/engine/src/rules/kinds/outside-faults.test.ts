import { describe, expect, test } from "vitest";
import { resolvedOn } from "../../../test-kit/instance.ts";
import { type Random, randomFrom } from "../../../test-kit/random.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { kindNamed } from "../registry.ts";

const grid = (id: string, column: number, digits: readonly number[]): Grid => ({
  id,
  called: `the ${id}`,
  size: digits.length,
  row: 1,
  column,
  digits,
});
const add = (digits: readonly number[]): number => digits.reduce((sum, digit) => sum + digit, 0);

/** What a row says by the sentence of each kind, `undefined` where it says nothing. */
const sayings: Readonly<Record<string, (row: readonly number[], digits: readonly number[]) => number | undefined>> = {
  "x-sum": (row) => (row[0]! <= row.length ? add(row.slice(0, row[0])) : undefined),
  sandwich: (row, digits) => {
    const ends = [digits[0], digits.at(-1)].map((slice) => row.flatMap((digit, k) => (digit === slice ? [k] : [])));
    if (ends.some((places) => places.length !== 1)) return undefined;
    const [from, to] = ends.flat().sort((a, b) => a - b);
    return add(row.slice(from! + 1, to));
  },
  skyscraper: (row) => row.filter((digit, k) => row.slice(0, k).every((other) => other < digit)).length,
  "numbered-room": (row) => row[row[0]! - 1],
};
const numbers: Readonly<Record<string, string>> = {
  "x-sum": "sum",
  sandwich: "sum",
  skyscraper: "sees",
  "numbered-room": "digit",
};

const rowsOf = ([first, ...rest]: readonly (readonly number[])[]): number[][] =>
  first === undefined ? [[]] : first.flatMap((digit) => rowsOf(rest).map((row) => [digit, ...row]));

const someDigits = (random: Random): number[] =>
  random
    .shuffled([0, 1, 2, 3, 4, 5, 7])
    .slice(0, 4)
    .sort((a, b) => a - b);

/** Two grids that share their last and first columns, so that cells of one row differ in what they can hold. */
const overlapping = (random: Random): readonly [Grid, Grid] | undefined => {
  const [left, right] = [someDigits(random), someDigits(random)];
  const shared = left.filter((digit) => right.includes(digit));
  return shared.length > 0 ? [grid("left", 1, left), grid("right", 3, right)] : undefined;
};

describe.each(Object.keys(sayings))("a number of %s is told just where no digits of its line make it", (name) => {
  const random = randomFrom(23);
  test.each(Array.from({ length: 25 }, (_, k) => k))("board %i", () => {
    const grids = overlapping(random);
    if (!grids) return;
    const [{ digits: left }, { digits: right }] = grids;
    const shared = left.filter((digit) => right.includes(digit));
    const from = random.pick(["left", "right"]);
    const domains = from === "left" ? [left, left, shared, shared] : [shared, shared, left, left];
    const made = new Set(rowsOf(domains).map((row) => sayings[name]!(row, left)));
    for (let number = name === "skyscraper" ? 1 : 0; number < 32; number++) {
      const value = { grid: "left", row: 2, from, [numbers[name]!]: number };
      const isFault = "faults" in resolvedOn(kindNamed(name)!, value, grids);
      expect(isFault, `${number} on ${left} where ${right} begins, from the ${from}`).toBe(!made.has(number));
    }
  });
});
