import { describe, expect, test } from "vitest";
import { foundBy, lacking, one } from "../../../test-kit/techniques.ts";
import type { Board } from "../../board/board.ts";
import { at } from "../../board/knowledge.ts";
import { cellNamed } from "../../puzzle/canvas.ts";

const square = one("size: 5, regions: none");
const all = [1, 2, 3, 4, 5];

/** What these cells lack so that they have only the digits named. */
const only = (cells: Record<string, readonly number[]>): Record<string, number[]> =>
  Object.fromEntries(Object.entries(cells).map(([name, left]) => [name, all.filter((digit) => !left.includes(digit))]));
const lack = (cells: string, digit: number): Record<string, number[]> =>
  Object.fromEntries(cells.split(" ").map((name) => [name, [digit]]));
const removes = (gone: Record<string, number[]>) => ({ places: {}, removes: gone });
/** Nothing by any of these names. */
const silent = (board: Board, state: ReturnType<typeof lacking>, ...names: string[]) =>
  expect(names.flatMap((name) => foundBy(name, board, state))).toEqual([]);

describe("xy-wing: both digits of a cell make another cell the same digit (common practice)", () => {
  const wing = lacking(square, only({ r1c1: [1, 2], r1c4: [1, 3], r4c1: [2, 3] }));
  test("the cell that sees both ends can't have it", () =>
    expect(foundBy("xy-wing", square, wing)).toEqual([removes({ r4c4: [3] })]));
  test("not where the ends share no digit besides", () =>
    silent(square, lacking(square, only({ r1c1: [1, 2], r1c4: [1, 3], r4c1: [2, 4] })), "xy-wing", "either-way"));
  test("not where an end is out of sight of the first cell", () =>
    silent(square, lacking(square, only({ r1c1: [1, 2], r1c4: [1, 3], r4c2: [2, 3] })), "xy-wing"));
});

describe("xyz-wing: the first cell has the digit itself as a third (common practice)", () => {
  const board = one("size: 6");
  const six = (cells: Record<string, readonly number[]>) =>
    Object.fromEntries(
      Object.entries(cells).map(([name, left]) => [name, [...all, 6].filter((d) => !left.includes(d))]),
    );
  test("what sees all three can't have it", () => {
    const state = lacking(board, six({ r1c1: [1, 2, 3], r2c2: [1, 3], r1c5: [2, 3] }));
    expect(foundBy("xyz-wing", board, state)).toContainEqual(removes({ r1c2: [3], r1c3: [3] }));
  });
  test("not with a fourth digit in the first cell", () =>
    silent(board, lacking(board, six({ r1c1: [1, 2, 3, 4], r2c2: [1, 3], r1c5: [2, 3] })), "xyz-wing"));
});

describe("w-wing: two cells of a pair and a house that needs one of its digits beside one of them (common practice)", () => {
  const pairs = only({ r1c1: [1, 2], r4c5: [1, 2] });
  test("the other digit is gone from what sees both", () =>
    expect(foundBy("w-wing", square, lacking(square, { ...pairs, ...lack("r2c3 r2c2 r2c4", 1) }))).toContainEqual(
      removes({ r1c5: [2], r4c1: [2] }),
    ));
  test("not with a third place in the house", () =>
    silent(square, lacking(square, { ...pairs, ...lack("r2c3 r2c2", 1) }), "w-wing"));
});

const size6 = one("size: 6");

describe("simple-colouring: last places of one digit that decide over each other (common practice)", () => {
  const rows = "r1c2 r1c3 r1c5 r1c6 r5c2 r5c3 r5c4";
  const gone = (cells: string) =>
    foundBy("simple-colouring", size6, lacking(size6, lack(cells, 5))).flatMap(({ removes }) =>
      Object.entries(removes),
    );
  test("two rows whose places share one column: one of the other ends has it", () => {
    // One of r1c4 and r5c5 is a 5, as not both rows can have theirs in column 1: r2c5 and r6c4 see both.
    expect(gone(`${rows} r5c6`).sort()).toEqual([
      ["r2c5", [5]],
      ["r6c4", [5]],
    ]);
  });
  test("not with a third place in one of the rows", () => expect(gone(rows)).toEqual([]));
});

describe("remote-pair: a chain of cells of one pair (common practice)", () => {
  const pair = [3, 4, 5, 6];
  test("the ends differ, so what sees both is neither", () => {
    const state = lacking(size6, { r1c1: pair, r1c4: pair, r2c5: pair, r5c5: pair });
    expect(foundBy("remote-pair", size6, state)).toContainEqual(removes({ r5c1: [1, 2] }));
  });
  test("three cells: the ends are alike, nothing follows", () =>
    silent(square, lacking(square, only({ r1c1: [1, 2], r1c4: [1, 2], r3c4: [1, 2] })), "remote-pair"));
});

describe("either-way: the same with clues", () => {
  test("both digits of a cell take the partner's digit from a dot", () => {
    // r1c1 is 1 or 2. With 1, r1c2 is 2 by the dot; with 2 itself: no 2 elsewhere in row 1.
    const board = one("size: 5, regions: none", "rules:\n  - kropke-white: r1c1 r1c2\n");
    const state = lacking(board, only({ r1c1: [1, 2] }));
    const gone = foundBy("either-way", board, state).flatMap(({ removes }) => Object.entries(removes));
    expect(gone).toEqual(
      expect.arrayContaining([
        ["r1c3", [2]],
        ["r1c4", [2]],
        ["r1c5", [2]],
      ]),
    );
  });
  test("a wing whose ends hang on dots", () => {
    // r3c3 is 2 or 4. With 2, r3c4 (1 or 4) is 1; with 4, r4c3 (1 or 5... by the dot 3 or 5) is 3 or 5.
    const board = one("size: 5, regions: none", "rules:\n  - kropke-black: [r3c3 r3c4, r3c3 r4c3]\n");
    const state = lacking(board, only({ r3c3: [2, 4], r3c4: [1, 2, 4], r4c3: [1, 2] }));
    for (const { removes } of foundBy("either-way", board, state))
      for (const [name, digits] of Object.entries(removes))
        expect(digits.every((digit) => (at(state, cellNamed(board.canvas, name)!) >>> digit) & 1)).toBe(true);
  });
  test("nothing on an empty board", () =>
    silent(square, lacking(square, {}), "either-way", "xy-wing", "simple-colouring"));
});
