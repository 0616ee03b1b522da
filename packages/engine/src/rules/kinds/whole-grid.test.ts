import { describe, expect, test } from "vitest";
import { instanceOn, resolvedOn } from "../../../test-kit/instance.ts";
import { rowsObeying, upTo } from "../../../test-kit/rows.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Bound, Faulty, Kind, Scope } from "../contract.ts";
import { allDotsShown } from "./all-dots-shown.ts";
import { antiKing } from "./anti-king.ts";
import { antiKnight } from "./anti-knight.ts";
import { diagonals } from "./diagonals.ts";
import { disjointGroups } from "./disjoint-groups.ts";
import { nonConsecutive } from "./non-consecutive.ts";
import { windows } from "./windows.ts";

const grid = (size: number, box?: readonly [rows: number, columns: number], more: Partial<Grid> = {}): Grid => ({
  id: "g",
  called: "the grid",
  size,
  row: 1,
  column: 1,
  digits: upTo(size),
  ...(box ? { box: { rows: box[0], columns: box[1] } } : {}),
  ...more,
});

/** The rows, columns and boxes of a grid alone on its canvas. */
const housesOf = ({ size, box }: Grid): Scope[] => {
  const cells = upTo(size ** 2).map((k) => k - 1);
  const groupsBy = (group: (row: number, column: number) => number): Scope[] =>
    upTo(size).map((k) => ({
      cells: cells.filter((cell) => group(Math.floor(cell / size), cell % size) === k - 1),
      different: true,
    }));
  return [
    ...groupsBy((row) => row),
    ...groupsBy((_, column) => column),
    ...(box ? groupsBy((row, column) => Math.floor(row / box.rows) * box.rows + Math.floor(column / box.columns)) : []),
  ];
};

/** How many fillings obey the rule; where it lets digits be renamed, those with 1, 2, 3, ... in the first row are counted. */
const countOf = (kind: Kind, on: Grid): number => {
  const { size } = on;
  const isRenamed = kind.relabels === "any";
  const first: Scope[] = isRenamed ? upTo(size).map((k) => ({ cells: [k - 1], holds: ([digit]) => digit === k })) : [];
  const scopes = [...first, ...housesOf(on), ...kind.scopes(instanceOn(kind, null, [on]))];
  const cells = upTo(size ** 2).map((k) => k - 1);
  let count = 0;
  for (const _ of rowsObeying(cells, scopes, on.digits)) count++;
  return isRenamed ? count * upTo(size).reduce((product, k) => product * k) : count;
};

// PUBLISHED.md, "Small boards under a whole-grid rule", counted for this project by a search and an answer-set solver.
describe("small boards under a whole-grid rule", () => {
  test.each([
    [diagonals, grid(4, [2, 2]), 48],
    [antiKing, grid(4, [2, 2]), 0],
    [antiKnight, grid(4, [2, 2]), 24],
    [nonConsecutive, grid(4, [2, 2]), 0],
    [disjointGroups, grid(4, [2, 2]), 168],
    [diagonals, grid(5), 960],
    [antiKing, grid(5), 240],
    [antiKnight, grid(5), 240],
    [nonConsecutive, grid(5), 20],
    [diagonals, grid(6, [2, 3]), 8640],
    [antiKing, grid(6, [2, 3]), 74160],
    [antiKnight, grid(6, [2, 3]), 11520],
    [nonConsecutive, grid(6, [2, 3]), 48],
    [disjointGroups, grid(6, [2, 3]), 2799360],
    [diagonals, grid(6), 92160],
    [antiKing, grid(6), 146880],
    [antiKnight, grid(6), 459360],
    [nonConsecutive, grid(6), 864],
  ] as const)("$0.name on $1.size rows: %$", (kind, on, expected) => {
    expect(countOf(kind as Kind, on)).toBe(expected);
  });
});

/** The ways to place one digit in every row, column and box of a 9x9, as the column of each row. */
const placements = (): number[][] => {
  const from = (columns: number[]): number[][] => {
    const row = columns.length;
    if (row === 9) return [columns];
    const band = columns.slice(row - (row % 3));
    return upTo(9)
      .map((k) => k - 1)
      .filter(
        (column) =>
          !columns.includes(column) && band.every((other) => Math.floor(other / 3) !== Math.floor(column / 3)),
      )
      .flatMap((column) => from([...columns, column]));
  };
  return from([]);
};

// PUBLISHED.md, below the table of small boards; the first number is OEIS A185141.
test("one digit's places in a 9x9 under chess moves and diagonals", () => {
  const nine = grid(9, [3, 3]);
  const all = placements().map((columns) => new Set(columns.map((column, row) => 9 * row + column)));
  const pairsOf = (kind: Kind): (readonly Cell[])[] =>
    kind.scopes(instanceOn(kind, null, [nine])).map(({ cells }) => cells);
  const [kings, knights, lines] = [pairsOf(antiKing), pairsOf(antiKnight), pairsOf(diagonals)];
  const apart = (pairs: readonly (readonly Cell[])[], places: ReadonlySet<Cell>): boolean =>
    !pairs.some((cells) => cells.every((cell) => places.has(cell)));
  const byKings = all.filter((places) => apart(kings, places));
  expect(all).toHaveLength(46656);
  expect(byKings).toHaveLength(14914);
  expect(all.filter((places) => apart(knights, places))).toHaveLength(3176);
  expect(byKings.filter((places) => apart(knights, places))).toHaveLength(130);
  const once = (cells: readonly Cell[], places: ReadonlySet<Cell>): boolean =>
    cells.filter((cell) => places.has(cell)).length === 1;
  expect(all.filter((places) => lines.every((cells) => once(cells, places)))).toHaveLength(9288);
});

test("a 9x9 has 224 knight's moves and 272 king's moves", () => {
  // Common practice: 4(n - 1)(n - 2) knight's moves and 2(n - 1)(2n - 1) king's moves on n rows of n.
  expect(antiKnight.scopes(instanceOn(antiKnight, null, 9))).toHaveLength(4 * 8 * 7);
  expect(antiKing.scopes(instanceOn(antiKing, null, 9))).toHaveLength(2 * 8 * 17);
});

const east = grid(4, undefined, { id: "east", called: "the east grid", column: 5 });
const west = grid(4, [2, 2], { id: "west", called: "the west grid" });
const south = grid(2, undefined, { id: "south", called: "the south grid", row: 5, column: 1 });

describe("grids bound together", () => {
  const pairsOf = (kind: Kind, value: unknown): string[] =>
    kind.scopes(instanceOn(kind, value, [west, east, south])).map(({ cells }) => cells.join("-"));

  // Row 1 of the canvas holds cells 0 to 7: 0 to 3 in the west, 4 to 7 in the east.
  test("moves and neighbours cross from grid to grid", () => {
    expect(pairsOf(antiKnight, null)).toContain("3-13");
    expect(pairsOf(antiKing, null)).toContain("3-12");
    expect(pairsOf(nonConsecutive, null)).toContain("3-4");
    expect(pairsOf(allDotsShown, null)).toContain("3-4");
  });
  test("but only between the grids named", () => {
    const both = pairsOf(antiKnight, { grids: ["west", "east"] });
    expect(both).toContain("3-13");
    expect(both.some((pair) => pair.includes("32"))).toBe(false);
    expect(pairsOf(antiKnight, { grids: ["west"] })).not.toContain("3-13");
    expect(pairsOf(antiKnight, null).some((pair) => pair.endsWith("-32"))).toBe(true);
  });
});

describe("houses that rules make", () => {
  const housesMade = (kind: Kind, value: unknown, on: readonly Grid[]): (string | undefined)[] =>
    kind.scopes(instanceOn(kind, value, on)).flatMap((scope) => ("different" in scope ? [scope.house] : []));

  test("are named by their grid", () => {
    expect(housesMade(diagonals, null, [west])).toEqual(["west/diagonal/down", "west/diagonal/up"]);
    expect(housesMade(diagonals, { which: "up", grids: ["east"] }, [west, east])).toEqual(["east/diagonal/up"]);
    expect(housesMade(windows, null, [grid(9)])).toEqual(["g/window/a", "g/window/b", "g/window/c", "g/window/d"]);
    expect(housesMade(disjointGroups, null, [west])).toEqual([undefined, undefined, undefined, undefined]);
  });
  test("down runs from the top left, up from the bottom left", () => {
    const cells = diagonals
      .scopes(instanceOn(diagonals, null, [west]))
      .map(({ cells }) => [...cells].sort((a, b) => a - b));
    expect(cells).toEqual([
      [0, 5, 10, 15],
      [3, 6, 9, 12],
    ]);
  });
});

describe("grids that do not fit", () => {
  test.each([
    [windows, null, [west], ": no grid that fits: a grid of nine rows in the file"],
    [
      windows,
      { grids: ["west"] },
      [west, grid(9, [3, 3], { column: 20 })],
      "grids/0: west: the id of a grid of nine rows",
    ],
    [disjointGroups, null, [east], ": no grid that fits: a grid whose regions are boxes in the file"],
    [
      disjointGroups,
      { grids: ["west", "east"] },
      [west, east],
      "grids/1: east: the id of a grid whose regions are boxes",
    ],
    [diagonals, { grids: ["north"] }, [west, east], "grids/0: north: the id of a grid: west, east"],
    [antiKnight, { grids: ["north"] }, [west, east], "grids/0: north: the id of a grid: west, east"],
  ] as const)("$0.name $1", (kind, value, on, expected) => {
    const instance: Bound | Faulty = resolvedOn(kind as Kind, value, on);
    const faults = "faults" in instance ? instance.faults : [];
    expect(faults.map(({ at = [], read, right }) => `${at.join("/")}: ${read}: ${right}`)).toEqual([expected]);
  });
  test("are left aside where none is named", () => {
    expect(disjointGroups.scopes(instanceOn(disjointGroups, null, [west, east]))).toHaveLength(4);
  });
});

test("a rule says where it holds only where that does not go without saying", () => {
  const said = (kind: Kind, value: unknown, on: readonly Grid[]): string =>
    kind.words(instanceOn(kind, value, on)).rule;
  const rule = "Cells a chess knight's move apart hold different digits.";
  expect(said(antiKnight, null, [west])).toBe(rule);
  expect(said(antiKnight, null, [west, east])).toBe(`Anywhere on the board, c${rule.slice(1)}`);
  expect(said(antiKnight, { grids: ["east"] }, [west, east])).toBe(`In the east grid, c${rule.slice(1)}`);
  expect(said(disjointGroups, null, [west, east])).toMatch(/^In the west grid, cells in the same place/);
});
