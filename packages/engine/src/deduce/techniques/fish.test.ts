import { describe, expect, test } from "vitest";
import { boardOf, foundBy, lacking, one } from "../../../test-kit/techniques.ts";
import { digitsOf } from "../../board/digits.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { fishIn } from "./fish.ts";

/** Names of cells: "r1c1 r1c4", each without the digits. */
const lack = (cells: string, ...digits: number[]): Record<string, number[]> =>
  Object.fromEntries(cells.split(" ").map((name) => [name, digits]));

const square = one("size: 5, regions: none");
const rows = { ...lack("r1c2 r1c3 r1c5 r4c2 r4c3 r4c5", 2) };

describe("x-wing: two houses keep a digit in two others (common practice)", () => {
  test("two rows, two columns", () =>
    expect(foundBy("x-wing", square, lacking(square, rows))).toEqual([
      { places: {}, removes: { r2c1: [2], r3c1: [2], r5c1: [2], r2c4: [2], r3c4: [2], r5c4: [2] } },
    ]));
  test("not where one of the rows has a third column", () =>
    expect(foundBy("x-wing", square, lacking(square, lack("r1c2 r1c3 r1c5 r4c2 r4c3", 2)))).toEqual([]));
  test("two boxes keep it in two rows, so the third box of those rows goes without", () => {
    const board = one("size: 9");
    const state = lacking(board, lack("r1c3 r2c3 r3c1 r3c2 r3c3 r1c6 r2c6 r3c4 r3c5 r3c6", 7));
    const rest = { r1c7: [7], r1c8: [7], r1c9: [7], r2c7: [7], r2c8: [7], r2c9: [7] };
    expect(foundBy("x-wing", board, state)).toContainEqual({ places: {}, removes: rest });
  });
  test("rows of two grids keep it in two columns of one", () => {
    const board = boardOf("  - { id: a, size: 4, regions: none }\n  - { id: b, size: 4, at: r3c3, regions: none }\n");
    const state = lacking(board, lack("r1c1 r1c2 r3c5 r3c6", 3));
    expect(foundBy("x-wing", board, state)).toContainEqual({
      places: {},
      removes: { r2c3: [3], r2c4: [3], r4c3: [3], r4c4: [3] },
    });
  });
  test("a cage takes the place of a column", () => {
    const board = one("size: 5, regions: none", "rules:\n  - cage: { cells: r1c1 r2c1 r2c2 r3c2 r4c2 }\n");
    const state = lacking(board, { ...lack("r1c2 r1c3 r1c5 r4c1 r4c3 r4c5", 2) });
    // Rows 1 and 4 keep their 2s in the cage and column 4.
    expect(foundBy("x-wing", board, state)).toContainEqual({
      places: {},
      removes: { r2c1: [2], r2c2: [2], r3c2: [2], r2c4: [2], r3c4: [2], r5c4: [2] },
    });
  });
});

describe("swordfish: three houses keep a digit in three others (common practice)", () => {
  const state = lacking(square, {
    ...lack("r1c3 r1c4 r1c5", 1),
    ...lack("r2c1 r2c4 r2c5", 1),
    ...lack("r3c2 r3c4 r3c5", 1),
  });
  test("no row needs all three columns", () =>
    expect(foundBy("swordfish", square, state)).toContainEqual({
      places: {},
      removes: { r4c1: [1], r5c1: [1], r4c2: [1], r5c2: [1], r4c3: [1], r5c3: [1] },
    }));
  test("not with a fourth column", () =>
    expect(
      foundBy(
        "swordfish",
        square,
        lacking(square, { ...lack("r1c3 r1c5", 1), ...lack("r2c1 r2c4", 1), ...lack("r3c2", 1) }),
      ),
    ).toEqual([]));
});

test("reasons that are not those of a fish show none", () => {
  const cell = (name: string) => cellNamed(square.canvas, name)!;
  const removes = new Map([[cell("r2c1"), digitsOf([2])]]);
  const facts = new Map(Object.keys(rows).map((name) => [cell(name), digitsOf([1, 3, 4, 5])]));
  const because = { spots: [], relations: [], rules: [], facts };
  const houses = ["main/row/1", "main/row/4", "main/column/1", "main/column/4"];
  expect(fishIn({ ...because, houses }, removes, square)?.places.length).toBe(4);
  expect(fishIn({ ...because, houses: houses.slice(1) }, removes, square)).toBeUndefined();
  expect(fishIn({ ...because, houses, facts: new Map() }, removes, square)).toBeUndefined();
});
