import { describe, expect, test } from "vitest";
import { countRows } from "../../../test-kit/count-rows.ts";
import { instanceOn, obeysScope, resolvedOn } from "../../../test-kit/instance.ts";
import type { Point, Shape } from "../../marks/shape.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Bound, Faulty, Kind, Scope } from "../contract.ts";
import { frameSum } from "./frame-sum.ts";
import { indexLine } from "./index-line.ts";
import { littleKiller } from "./little-killer.ts";
import { numberedRoom } from "./numbered-room.ts";
import { outsideDigits } from "./outside-digits.ts";
import { sandwich } from "./sandwich.ts";
import { skyscraper } from "./skyscraper.ts";
import { xSum } from "./x-sum.ts";

type Reading = Extract<Scope, { start: unknown }>;
const readingOf = (kind: Kind, value: unknown, on: number | readonly Grid[]): Reading =>
  kind.scopes(instanceOn(kind, value, on))[0] as Reading;
const run = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, k) => from + k);
const nine = run(1, 9);

/** How many rows of 1 to 9 obey the clue; none where it is a fault. */
const rowsOf = (kind: Kind, value: unknown): number => {
  const instance = resolvedOn(kind, value, 9);
  return "faults" in instance ? 0 : countRows(kind.scopes(instance)[0] as Reading, nine);
};

const grid = (digits: readonly number[], more: Partial<Grid> = {}): Grid => ({
  id: "g",
  called: "the grid",
  size: digits.length,
  row: 1,
  column: 1,
  digits,
  ...more,
});

/** Whether the line, as it is seen from the clue, obeys it. */
const obeys = (kind: Kind, value: unknown, on: number | readonly Grid[], row: readonly number[]): boolean => {
  const scope = readingOf(kind, value, on);
  return obeysScope(scope, (cell) => row[scope.cells.indexOf(cell)]!);
};

// PUBLISHED.md, "Tables behind the rules, digits 1-9", counted there exhaustively.
describe("rows of the digits 1 to 9", () => {
  const published =
    "80640 0 10080 10080 10080 12960 12960 15840 15840 10080 10080 11520 10080 11520 9792 11232 8064 9216 8928 7488 8640 " +
    "7488 7488 6336 6624 5472 5472 5760 5760 4320 4320 2880 2880 2880 0 10080";

  test("by their sandwich sum, 0 to 35, all 362880 of them", () => {
    const counts = run(0, 35).map((sum) => rowsOf(sandwich, { row: 1, sum }));
    expect(counts.join(" ")).toBe(published);
    expect(counts.reduce((sum, count) => sum + count)).toBe(362880);
  });

  // Unsigned Stirling numbers of the first kind.
  test("by how many skyscrapers are seen", () => {
    const counts = nine.map((sees) => rowsOf(skyscraper, { row: 1, from: "left", sees }));
    expect(counts.join(" ")).toBe("40320 109584 118124 67284 22449 4536 546 36 1");
  });

  // Every row has one x-sum, and one digit in its numbered room.
  test("have one x-sum and one numbered room each", () => {
    const sums = run(0, 45).map((sum) => rowsOf(xSum, { row: 1, from: "left", sum }));
    expect(sums.reduce((sum, count) => sum + count)).toBe(362880);
    expect(sums[1]).toBe(40320);
    expect(sums[45]).toBe(40320);
    const rooms = nine.map((digit) => rowsOf(numberedRoom, { row: 1, from: "left", digit }));
    // The 1 stands where the first digit says in the 8! rows that begin with it and in 7! rows for each other beginning.
    expect(rooms).toEqual(nine.map((digit) => (digit === 1 ? 2 * 40320 : 7 * 5040)));
  });
});

describe("a clue is read from its side", () => {
  test.each([
    [{ row: 2, from: "left" }, [4, 5, 6, 7]],
    [{ row: 2, from: "right" }, [7, 6, 5, 4]],
    [{ column: 3, from: "top" }, [2, 6, 10, 14]],
    [{ column: 3, from: "bottom" }, [14, 10, 6, 2]],
  ])("%j", (line, cells) => {
    expect(readingOf(skyscraper, { ...line, sees: 2 }, 4).cells).toEqual(cells);
    expect(readingOf(frameSum, { ...line, sum: 5, over: 2 }, 4).cells).toEqual(cells.slice(0, 2));
  });

  test("a sandwich needs no side, and is the same from both", () => {
    expect(readingOf(sandwich, { row: 2, sum: 2 }, 4).cells).toEqual([4, 5, 6, 7]);
    expect(obeys(sandwich, { row: 2, sum: 2 }, 4, [3, 1, 2, 4])).toBe(true);
    expect(obeys(sandwich, { row: 2, sum: 2, from: "right" }, 4, [3, 1, 2, 4])).toBe(true);
  });
});

describe("a sandwich", () => {
  test.each([
    [[3, 1, 4, 2], true],
    [[3, 1, 2, 4], false],
    [[1, 4, 1, 4], false],
    [[1, 4, 3, 1], false],
    [[2, 1, 3, 2], false],
    [[2, 3, 3, 2], false],
  ])("of 0 in %j: %s", (row, holds) => expect(obeys(sandwich, { row: 1, sum: 0 }, 4, row)).toBe(holds));

  test("takes the lowest and highest digit of its grid", () => {
    expect(obeys(sandwich, { row: 1, sum: 7 }, [grid([0, 2, 5, 8])], [8, 5, 2, 0])).toBe(true);
  });
});

describe("an x-sum", () => {
  const zeros = [grid([0, 1, 2, 3])];
  test.each([
    [0, zeros, [0, 3, 1, 2], true],
    [1, 4, [1, 2, 3, 4], true],
    [7, 4, [3, 2, 2, 1], true],
    [10, 4, [4, 1, 2, 3], true],
    [3, 4, [2, 2, 1, 1], false],
  ])("of %i", (sum, on, row, holds) => expect(obeys(xSum, { row: 1, from: "left", sum }, on, row)).toBe(holds));

  test("is broken by an X that is no place of the line", () => {
    const big = [grid([1, 2, 3, 9])];
    const states = run(1, 15).map((sum) => {
      const instance = resolvedOn(xSum, { row: 1, from: "left", sum }, big);
      return !("faults" in instance) && obeysScope(xSum.scopes(instance)[0]!, (cell) => [9, 1, 2, 3][cell]!);
    });
    expect(states).not.toContain(true);
  });
});

describe("a numbered room", () => {
  test.each([
    [1, [1, 2, 3, 4], true],
    [2, [1, 2, 3, 4], false],
    [4, [3, 2, 4, 1], true],
    [2, [3, 2, 4, 1], false],
    [4, [4, 3, 2, 4], true],
  ])("of %i in %j: %s", (digit, row, holds) =>
    expect(obeys(numberedRoom, { row: 1, from: "left", digit }, 4, row)).toBe(holds),
  );
  test("is broken by an N that is no place of the line", () => {
    expect(obeys(numberedRoom, { row: 1, from: "left", digit: 2 }, [grid([0, 1, 2, 3])], [0, 1, 2, 3])).toBe(false);
  });
});

describe("outside digits", () => {
  const boxes = [grid(run(1, 6), { box: { rows: 2, columns: 3 } })];
  test.each([
    ["the box's columns beside a row", { row: 1, from: "left", digits: [1] }, boxes, 3],
    ["the box's rows above a column", { column: 1, from: "top", digits: [1] }, boxes, 2],
    ["three where there are no boxes", { column: 1, from: "top", digits: [1] }, 6, 3],
    ["what is said", { column: 1, from: "top", digits: [1], within: 4 }, boxes, 4],
    ["the whole line where it is shorter", { row: 1, from: "left", digits: [1] }, 2, 2],
  ])("lie within %s", (_, value, on, depth) => expect(readingOf(outsideDigits, value, on).cells).toHaveLength(depth));

  test("are counted", () => {
    const twice = { row: 1, from: "left", digits: [2, 5, 2] };
    expect(obeys(outsideDigits, twice, 6, [2, 5, 2])).toBe(true);
    expect(obeys(outsideDigits, twice, 6, [2, 5, 5])).toBe(false);
  });
});

describe("an index line", () => {
  /** A Latin square in which column 2 indexes the 2s: the digit of row r there is the column of the 2 of row r. */
  const square = [
    [2, 1, 4, 3],
    [1, 2, 3, 4],
    [4, 3, 2, 1],
    [3, 4, 1, 2],
  ];
  const turning = [
    [1, 2, 3, 4],
    [2, 3, 4, 1],
    [3, 4, 1, 2],
    [4, 1, 2, 3],
  ];
  const holds = (value: unknown, rows = square): boolean => {
    const digits = rows.flat();
    return indexLine
      .scopes(instanceOn(indexLine, value, 4))
      .every((scope) => obeysScope(scope, (cell) => digits[cell]!));
  };
  test("says where its number stands", () => {
    expect(holds({ column: 2 })).toBe(true);
    expect(holds({ row: 2 })).toBe(true);
    expect(holds({ column: 1 }, turning)).toBe(false);
    expect(holds({ row: 3 }, turning)).toBe(false);
  });
  test("brings in all cells of its grid, and is drawn on its line alone", () => {
    const instance = instanceOn(indexLine, { column: 2 }, 4);
    expect(instance.cells).toHaveLength(16);
    expect(indexLine.words(instance).at).toEqual([1, 5, 9, 13]);
  });
});

describe("what no digits can meet is a fault that says what would be right", () => {
  test.each([
    [sandwich, { row: 3, sum: 1 }, 4, "sum 1: a sum that digits between the 1 and the 4 of row 3 can make"],
    [
      xSum,
      { column: 2, from: "top", sum: 99 },
      4,
      "sum 99: a sum that the first X digits of column 2 can make, X being the first of them",
    ],
    [
      skyscraper,
      { row: 1, from: "left", sees: 5 },
      4,
      "sees 5: how many digits of row 1 can be greater than all before them",
    ],
    [
      numberedRoom,
      { row: 1, from: "left", digit: 7 },
      4,
      "digit 7: a digit that can stand in row 1 where the first one says",
    ],
    [frameSum, { row: 1, from: "left", sum: 20 }, 4, "sum 20: three digits of 1-4 reach 12 at most, not 20"],
    [frameSum, { row: 1, from: "left", sum: 6, over: 5 }, 4, "over 5: at most 4, the cells of the line"],
    [
      outsideDigits,
      { row: 1, from: "left", digits: [5] },
      4,
      "digits 5: digits that the first three cells can hold together",
    ],
    [
      outsideDigits,
      { row: 1, from: "left", digits: [1, 2, 3], within: 2 },
      4,
      "digits 1, 2 and 3: digits that the first two cells can hold together",
    ],
    [outsideDigits, { row: 1, from: "left", digits: [1], within: 5 }, 4, "within 5: at most 4, the cells of the line"],
    [littleKiller, { cells: "r1c2 r2c3", sum: 9 }, 4, "sum 9: two digits of 1-4 reach 8 at most, not 9"],
    [indexLine, { column: 2 }, [grid([0, 1, 2, 3])], "column the digits 0-3: a line of a grid with the digits 1 to 4"],
    [sandwich, { row: 5, sum: 2 }, 4, "row 5: a row of the grid, 1 to 4"],
  ] as const)("$0.name $1", (kind, value, on, expected) => {
    const instance: Bound | Faulty = resolvedOn(kind as Kind, value, on);
    const faults = "faults" in instance ? instance.faults : [];
    expect(faults.map(({ at = [], read, right }) => `${[...at, read].join(" ")}: ${right}`)).toEqual([expected]);
  });
});

test("a clue among the cells of another grid stands small at the edge, out of the way of their digits", () => {
  const two = [grid(run(1, 4)), grid(run(1, 4), { id: "h", row: 3, column: 3 })];
  const numberOf = (value: unknown) =>
    skyscraper.marks(instanceOn(skyscraper, value, two)).find((shape) => shape.shape === "text")!;
  const [open, crowded] = [
    numberOf({ grid: "g", row: 3, from: "left", sees: 2 }),
    numberOf({ grid: "h", row: 1, from: "left", sees: 2 }),
  ];
  expect(open.at[0]).toBeCloseTo(-0.45);
  expect(crowded.size).toBeLessThan(open.size);
  expect(crowded.at[0]).toBeGreaterThan(1.5);
  expect(crowded.at[0]).toBeLessThan(2);
  expect(crowded.at[1]).toBeLessThan(2.5);
});

describe("a clue in the open is drawn clear of its grid", () => {
  const sides = [
    { row: 2, from: "left" },
    { row: 2, from: "right" },
    { column: 3, from: "top" },
    { column: 3, from: "bottom" },
  ];
  const clues: readonly (readonly [Kind, object])[] = [
    [sandwich, { sum: 12 }],
    [xSum, { sum: 15 }],
    [skyscraper, { sees: 3 }],
    [numberedRoom, { digit: 3 }],
    [outsideDigits, { digits: [1, 2, 3, 4], within: 4 }],
    [frameSum, { sum: 12 }],
  ];
  const pointsOf = (shape: Shape): readonly Point[] => (shape.shape === "line" ? shape.points : [shape.at]);
  const isInside = ([x, y]: Point): boolean => x > 0 && x < 6 && y > 0 && y < 6;

  test.each(clues.flatMap(([kind, said]) => sides.map((line) => [kind, { ...line, ...said }] as const)))(
    "$0.name $1",
    (kind, value) => {
      const shapes = kind.marks(instanceOn(kind, value, 6));
      expect(shapes.flatMap(pointsOf).filter(isInside)).toEqual([]);
      expect(shapes.map(({ layer }) => layer)).toEqual(shapes.map(() => "outside"));
    },
  );

  test("a little killer stands where its diagonal enters", () => {
    const numbers = ["r1c2-r5c6", "r5c6-r1c2", "r1c4-r4c1", "r6c2-r2c6"].map((cells) =>
      littleKiller.marks(instanceOn(littleKiller, { cells, sum: 12 }, 6)),
    );
    expect(numbers.flat().flatMap(pointsOf).filter(isInside)).toEqual([]);
    expect(numbers.map(([number]) => (number?.shape === "text" ? number.anchor : undefined))).toEqual([
      "end",
      "start",
      "start",
      "end",
    ]);
  });
});
