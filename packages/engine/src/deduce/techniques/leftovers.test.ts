import { describe, expect, test } from "vitest";
import { boardOf, foundBy, lacking, one } from "../../../test-kit/techniques.ts";
import { startOf } from "../../board/knowledge.ts";
import { leftoverUnits } from "../leftover-units.ts";

/** Regions a and b fill the first two rows but for one cell each way: b reaches into row 3, c into row 2. */
const crooked = one("size: 4, regions: 'aaab abbb cccd cddd'");
const names = (cells: readonly number[]): string[] => cells.map((cell) => crooked.canvas.names[cell]!);

describe("leftovers: rows against regions (the law of leftovers; common practice)", () => {
  test("three cells in one row and one in the next: one sticks out, one is missing", () => {
    const unit = leftoverUnits(crooked).find(
      ({ plus, minus }) => plus[0]!.id === "main/region/a" && minus.length === 1,
    )!;
    expect([names(unit.inside), names(unit.outside)]).toEqual([["r2c1"], ["r1c4"]]);
  });
  test("those two are the same digit: what one can't be the other can't", () =>
    expect(foundBy("leftovers", crooked, lacking(crooked, { r2c1: [1, 2] }))).toContainEqual({
      places: {},
      removes: { r1c4: [1, 2] },
    }));
  test("nothing while nothing is known of either", () => expect(foundBy("leftovers", crooked)).toEqual([]));
  test("no two sorts of houses coincide nearly: nothing to compare", () =>
    expect(leftoverUnits(one("size: 9"))).toEqual([]));
});

describe("leftovers where the digits differ", () => {
  /** The second row of the four lies in the first of the six, all but one cell. */
  const board = boardOf(
    "  - { id: six, size: 6, regions: none }\n  - { id: four, size: 4, at: r3c4, regions: none }\n",
  );
  test("the row of six has besides what the row of four has besides, and 5 and 6", () => {
    const units = leftoverUnits(board).filter(({ plus, minus }) => plus[0]!.grid !== minus[0]!.grid);
    const [unit] = units.filter(({ plus, minus }) => plus.length === 1 && minus.length === 1);
    expect(unit && unit.inside.length - unit.outside.length).toBe(2);
    // r3c1 to r3c3 hold 5, 6 and what r3c7 holds, 3 or 4: that is r3c1, and the others are 5 and 6.
    const state = lacking(board, { r3c1: [5, 6], r3c7: [1, 2] });
    expect(foundBy("leftovers", board, state)).toContainEqual({
      places: {},
      removes: { r3c1: [1, 2], r3c2: [1, 2, 3, 4], r3c3: [1, 2, 3, 4] },
    });
  });
  test("without further knowledge the row of six keeps room for 5 and 6", () =>
    expect(foundBy("leftovers", board, startOf(board))).toEqual([]));
});

describe("equal-sets: more cells a side", () => {
  // Regions a and b are rows 1 and 2 but for three cells, and have three of row 3.
  const board = one("size: 6, regions: 'aaabbb aabccc abbccc dddeee dddeee ffffff'");
  test("a digit that the ones can't have the others can't have", () => {
    const unit = leftoverUnits(board).find(({ inside, outside }) => inside.length === 3 && outside.length === 3)!;
    const cells = (list: readonly number[]): string[] => list.map((cell) => board.canvas.names[cell]!);
    const gone = Object.fromEntries(cells(unit.inside).map((name) => [name, [4]]));
    const rest = Object.fromEntries(cells(unit.outside).map((name) => [name, [4]]));
    expect(foundBy("equal-sets", board, lacking(board, gone))).toContainEqual({ places: {}, removes: rest });
    expect(foundBy("equal-sets", board)).toEqual([]);
  });
});
