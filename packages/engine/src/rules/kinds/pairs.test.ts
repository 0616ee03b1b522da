import { describe, expect, test } from "vitest";
import { instanceOn, obeysScope, resolvedOn } from "../../../test-kit/instance.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Bound, Faulty, Kind } from "../contract.ts";
import { allBarsShown } from "./all-bars-shown.ts";
import { allDotsShown } from "./all-dots-shown.ts";
import { allXvShown } from "./all-xv-shown.ts";
import { consecutiveBar } from "./consecutive-bar.ts";
import { greaterThan } from "./greater-than.ts";
import { kropkeBlack } from "./kropke-black.ts";
import { kropkeWhite } from "./kropke-white.ts";
import { nonConsecutive } from "./non-consecutive.ts";
import { xvV } from "./xv-v.ts";
import { xvX } from "./xv-x.ts";

const edge = "r1c1 r1c2";

/** The pairs of different digits from 1 to `most`, the smaller first, that the rule's definition allows on one edge. */
const allowed = (kind: Kind, value: unknown, most: number): [number, number][] => {
  const instance = instanceOn(kind, value, most);
  const [scope] = kind.scopes(instance).filter(({ cells }) => cells.includes(0) && cells.includes(1));
  const digits = Array.from({ length: most }, (_, k) => k + 1);
  return digits.flatMap((low) =>
    digits
      .filter((high) => high > low && obeysScope(scope!, (cell) => (cell === scope!.cells[0] ? low : high)))
      .map((high): [number, number] => [low, high]),
  );
};

// PUBLISHED.md, "Tables behind the rules, digits 1-9", counted there exhaustively.
describe("pairs of the digits 1 to 9", () => {
  const white = allowed(kropkeWhite, edge, 9).map(String);
  const black = allowed(kropkeBlack, edge, 9).map(String);

  test("8 of 36 differ by 1, 4 have the ratio 2, 11 are either, 25 neither, and 1-2 is both", () => {
    expect(white).toHaveLength(8);
    expect(black).toEqual(["1,2", "2,4", "3,6", "4,8"]);
    expect(new Set([...white, ...black]).size).toBe(11);
    expect(allowed(allDotsShown, null, 9)).toHaveLength(25);
    expect(white.filter((pair) => black.includes(pair))).toEqual(["1,2"]);
  });

  test("a pair without a dot is one that no dot allows", () => {
    const bare = allowed(allDotsShown, null, 9).map(String);
    expect(bare.filter((pair) => white.includes(pair) || black.includes(pair))).toEqual([]);
  });

  test("4 pairs make 10 and 2 make 5", () => {
    expect(allowed(xvX, edge, 9)).toHaveLength(4);
    expect(allowed(xvV, edge, 9)).toHaveLength(2);
    expect(allowed(allXvShown, null, 9)).toHaveLength(36 - 4 - 2);
  });

  test("bars, missing bars and neighbours that are not consecutive divide the pairs as the white dots do", () => {
    expect(allowed(consecutiveBar, edge, 9).map(String)).toEqual(white);
    expect(allowed(allBarsShown, null, 9)).toHaveLength(36 - 8);
    expect(allowed(nonConsecutive, null, 9)).toHaveLength(36 - 8);
  });

  // Common practice.
  test("no 5, 7 or 9 lies on a black dot; on 1 to 6 the 5 alone does not, and a 6 has a 3 beside it", () => {
    expect(new Set(allowed(kropkeBlack, edge, 9).flat())).toEqual(new Set([1, 2, 3, 4, 6, 8]));
    expect(allowed(kropkeBlack, edge, 6)).toEqual([
      [1, 2],
      [2, 4],
      [3, 6],
    ]);
  });
});

test("a number in a dot is its ratio or difference, and a dot without one is 2 or 1", () => {
  expect(allowed(kropkeBlack, { cells: edge, by: 3 }, 9)).toEqual([
    [1, 3],
    [2, 6],
    [3, 9],
  ]);
  expect(allowed(kropkeWhite, { cells: edge, by: 7 }, 9)).toEqual([
    [1, 8],
    [2, 9],
  ]);
});

const grid = (id: string, column: number, digits: readonly number[]): Grid => ({
  id,
  called: `the ${id} grid`,
  size: digits.length,
  row: 1,
  column,
  digits,
});

test("0 stands on no black dot and asks for none", () => {
  const zeros = [grid("low", 1, [0, 1]), grid("high", 3, [0, 2])];
  const holds = (kind: Kind, value: unknown, first: number, second: number): boolean =>
    kind.scopes(instanceOn(kind, value, zeros)).every((scope) => {
      const digits = new Map([
        [1, first],
        [2, second],
      ]);
      return !scope.cells.every((cell) => digits.has(cell)) || obeysScope(scope, (cell) => digits.get(cell)!);
    });
  expect(holds(kropkeBlack, "r1c2 r1c3", 1, 2)).toBe(true);
  expect(holds(kropkeBlack, "r1c2 r1c3", 0, 0)).toBe(false);
  expect(holds(allDotsShown, null, 0, 0)).toBe(true);
  expect(holds(allDotsShown, null, 1, 2)).toBe(false);
  expect(kropkeBlack.words(instanceOn(kropkeBlack, "r1c2 r1c3", zeros)).rule).toMatch(/0 is on none\.$/);
});

test("the greater cell is the first one, and its sign opens to it", () => {
  const [scope] = greaterThan.scopes(instanceOn(greaterThan, "r1c2 r1c1", 4));
  expect(scope!.cells).toEqual([1, 0]);
  expect(obeysScope(scope!, (cell) => [1, 4][cell]!)).toBe(true);
  expect(obeysScope(scope!, () => 3)).toBe(false);
  const chevron = greaterThan.marks(instanceOn(greaterThan, "r1c2 r1c1", 4)).find(({ shape }) => shape === "line");
  const [open, tip] = (chevron as Extract<typeof chevron, { shape: "line" }>).points;
  expect(tip![0]).toBeLessThan(1);
  expect(open![0]).toBeGreaterThan(1);
});

describe("what no digits can meet is a fault that says what would be right", () => {
  const high = [grid("high", 1, [6, 7, 8, 9])];
  const beside = [grid("low", 1, [1, 2]), grid("high", 3, [3, 4])];
  test.each([
    [xvX, edge, high, "r1c1 r1c2: an X between cells whose digits can add up to 10"],
    [xvV, edge, high, "r1c1 r1c2: a V between cells whose digits can add up to 5"],
    [kropkeBlack, edge, high, "r1c1 r1c2: a black dot whose cells can hold a digit and twice it"],
    [kropkeBlack, { cells: edge, by: 5 }, 4, "by 5: a black dot whose cells can hold a digit and five times it"],
    [kropkeWhite, { cells: edge, by: 4 }, 4, "by 4: a white dot whose cells can hold digits that differ by 4"],
    [
      consecutiveBar,
      "r1c3 r1c2",
      [grid("gaps", 1, [1, 5, 9])],
      "r1c3 r1c2: a bar between cells whose digits can differ by 1",
    ],
    [greaterThan, "r1c2 r1c3", beside, "r1c2 r1c3: the greater cell first; this first cell can't be greater"],
  ] as const)("$0.name $1", (kind, value, on, expected) => {
    const instance: Bound | Faulty = resolvedOn(kind as Kind, value, on);
    const faults = "faults" in instance ? instance.faults : [];
    expect(faults.map(({ at = [], read, right }) => `${[...at, read].join(" ")}: ${right}`)).toEqual([expected]);
  });
});
