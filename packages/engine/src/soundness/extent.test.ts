import { expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import { finished } from "../finished.ts";
import { measuringExtent } from "./extent.ts";

const extentOf = (text: string, bound = 1000) => {
  const board = compile(puzzleOf(text));
  const { open, ...many } = finished(measuringExtent(board, bound));
  return { ...many, open: open.map((cell) => board.canvas.names[cell]) };
};

// OEIS A107739: 288 filled 4x4 grids with boxes.
test("an empty grid: every cell is open", () =>
  expect(extentOf(tiny(["cage: { cells: r1c1 }"]))).toMatchObject({ count: 288, exact: true, open: { length: 16 } }));

test("counting stops at the bound, and the open cells are of all solutions", () =>
  expect(extentOf(tiny(["cage: { cells: r1c1 }"]), 5)).toMatchObject({ count: 5, exact: false, open: { length: 16 } }));

// r3c1 sees 1, 3 and 4, so it is 2 and r3c2 is 1. In the two right columns 1 and 2 can change places.
test("where two digits can change places", () =>
  expect(
    extentOf(
      tiny(
        ["even: r1c2"],
        {},
        "{ r1c1: 1, r1c2: 2, r1c3: 3, r1c4: 4, r2c1: 3, r2c2: 4, r3c3: 4, r3c4: 3, r4c1: 4, r4c2: 3 }",
      ),
    ),
  ).toEqual({ count: 2, exact: true, open: ["r2c3", "r2c4", "r4c3", "r4c4"] }));

test("no solution has no open cells", () =>
  expect(extentOf(tiny(["cage: { cells: r1c1 r1c2, sum: 3 }"], {}, "{ r1c3: 1 }"))).toEqual({
    count: 0,
    exact: true,
    open: [],
  }));
