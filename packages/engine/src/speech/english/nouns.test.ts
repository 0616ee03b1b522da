import { expect, test } from "vitest";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { compile } from "../../board/compile.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { nounsFor } from "./nouns.ts";
import { beatName } from "./telling.ts";

const board = compile(
  puzzleOf(`puzzle: 1
title: Two
grids:
  - { id: mill, called: the mill, size: 4 }
  - { id: yard, called: the yard, size: 4, at: r3c3 }
rules:
  - cage: { cells: r2c1 r1c1, sum: 5 }
`),
);
const cells = (names: string) => names.split(" ").map((name) => cellNamed(board.canvas, name)!);
const placed = nounsFor(board, "placed");

test("places with commas in them are told apart by semicolons where there are more than two", () => {
  expect(placed.cells(cells("r1c1 r2c2"))).toBe("row 1, column 1 and row 2, column 2 of the mill");
  expect(placed.cells(cells("r1c1 r2c2 r3c1"))).toBe(
    "row 1, column 1; row 2, column 2; and row 3, column 1 of the mill",
  );
});

test("a cage's cells are read in order, whatever their order in the file", () =>
  expect(placed.rule("cage/1")).toBe("the cage of 5 at column 1, rows 1 and 2 of the mill"));

test("a beat is named for the house that its steps speak of, where cells lie in two grids", () => {
  const step = (house: string): Deduction =>
    ({
      level: 1,
      places: new Map(cells("r3c3 r3c4").map((cell, k) => [cell, k + 1])),
      because: { houses: [house], rules: [] },
    }) as unknown as Deduction;
  expect(beatName(board, [step("yard/row/1")])).toBe("1 and 2 in row 1 of the yard");
  expect(beatName(board, [step("mill/row/3")])).toBe("1 and 2 in row 3 of the mill");
});
