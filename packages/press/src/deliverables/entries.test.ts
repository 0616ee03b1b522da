import { compile, type Plan, type PlanBeat } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { entriesOf, entriesSaid } from "./entries.ts";

const two = compile(
  puzzleOf(`puzzle: 1
title: Two
grids:
  - { id: mill, called: the mill, size: 4 }
  - { id: yard, called: the yard, size: 4, at: r3c3 }
`),
);
const one = compile(puzzleOf("puzzle: 1\ntitle: One\ngrids: [{ id: mill, size: 4 }]\n"));

const nothing: PlanBeat["writes"] = { cells: {}, spots: [] };
const said = (board: typeof two, places: Record<string, number>, writes = nothing): string[] => {
  const plan = { steps: [{ n: 1, places }] } as unknown as Plan;
  return entriesSaid(entriesOf({ board, plan }, { steps: [1], writes } as unknown as PlanBeat));
};

describe("what is entered and marked at a beat", () => {
  test("one digit names its grid", () =>
    expect(said(two, { r1c2: 3 })).toEqual(["Enter 3 in row 1, column 2 of the mill."]));
  test("several in one grid name it once", () =>
    expect(said(two, { r5c5: 1, r3c3: 2, r6c4: 3 })).toEqual([
      "In the yard, enter 1 in row 3, column 3; 2 in row 1, column 1; 3 in row 4, column 2.",
    ]));
  test("shared cells go by the grid in which the rest lies", () =>
    expect(said(two, { r3c3: 2, r1c1: 1 })).toEqual([
      "In the mill, enter 2 in row 3, column 3; 1 in row 1, column 1.",
    ]));
  test("in different grids each names its own", () =>
    expect(said(two, { r1c1: 1, r6c6: 2 })).toEqual([
      "Enter 1 in row 1, column 1 of the mill; 2 in row 4, column 4 of the yard.",
    ]));
  test("where there is one grid it is not named", () =>
    expect(said(one, { r1c1: 1, r2c2: 2 })).toEqual(["Enter 1 in row 1, column 1; 2 in row 2, column 2."]));
  test("where there is one grid a digit's places are told as well", () => {
    const row = { digit: 4, house: "mill/row/2", cells: ["r2c2", "r2c3"] };
    const box = { digit: 3, house: "mill/region/a", cells: ["r1c1", "r2c1"] };
    expect(said(one, {}, { cells: {}, spots: [row, box] })).toEqual([
      "Mark the 4 of row 2 in columns 2 and 3; the 3 of the top left box in column 1, rows 1 and 2.",
    ]);
  });
  test("cells with the same marks are said together, after the digits", () =>
    expect(said(two, { r5c6: 3 }, { cells: { r6c5: [1, 2], r6c6: [1, 2], r5c5: [2, 4] }, spots: [] })).toEqual([
      "In the yard, enter 3 in row 3, column 4.",
      "Mark 1 and 2 in row 4, columns 3 and 4; 2 and 4 in row 3, column 3.",
    ]));
  test("where a digit goes in a row or column is said without naming that again", () => {
    const spots = [{ digit: 4, house: "mill/column/2", cells: ["r3c2", "r4c2"] }];
    expect(said(two, {}, { cells: {}, spots })).toEqual(["Mark the 4 of column 2 of the mill in rows 3 and 4."]);
    expect(said(two, { r1c1: 1 }, { cells: {}, spots })).toEqual([
      "In the mill, enter 1 in row 1, column 1.",
      "Mark the 4 of column 2 in rows 3 and 4.",
    ]);
  });
  test("where it goes in a box is said in full", () =>
    expect(
      said(two, {}, { cells: {}, spots: [{ digit: 4, house: "yard/region/d", cells: ["r5c5", "r5c6"] }] })[0],
    ).toMatch(/^Mark the 4 of the .* box of the yard in row 3, columns 3 and 4\.$/));
});
