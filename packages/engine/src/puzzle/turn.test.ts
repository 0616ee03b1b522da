import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { inverse, mayTurn, relabelled, turned, turns } from "./turn.ts";
import { write } from "./write.ts";

const file = `puzzle: 1
title: Turning
grids:
  - { id: north, size: 6, at: r3c2 }
  - { id: south, size: 4, at: r7c6, regions: none }
givens: { cells: { r3c2: 1, r8c7: 4 } }
rules:
  - thermometer: r3c2 r3c3 r4c4
  - quadruple: { at: r3c6, digits: 1 2 }
  - x-sum: { grid: north, row: 2, from: left, sum: 9 }
  - skyscraper: { column: 5, from: bottom, sees: 3 }
  - diagonals: { grids: [south], which: down }
  - little-killer: { cells: r7c6-r10c9, sum: 9 }
`;
const puzzle = puzzleOf(file);
const named = (name: string) => turns.find((turn) => turn.name === name)!;
const linesOf = (name: string): string[] =>
  write(turned(puzzle, named(name)))
    .split("\n")
    .filter((line) => /^ {2}- [a-z-]+: [r{]/.test(line));

// The sheet takes up rows 3 to 10 and columns 2 to 9; turned, rows 2 to 9 and columns 3 to 10: r3c2, its top left, goes
// to its top right, r2c10.
test("a quarter to the right, worked out by hand", () =>
  expect(linesOf("a quarter to the right")).toEqual([
    "  - thermometer: r2c10 r3c10 r4c9",
    "  - quadruple: { at: r6c9, digits: 1 2 }",
    "  - x-sum: { grid: north, column: 5, from: top, sum: 9 }",
    "  - skyscraper: { grid: north, row: 5, from: left, sees: 3 }",
    "  - diagonals: { grids: [south], which: up }",
    "  - little-killer: { cells: r6c6-r9c3, sum: 9 }",
  ]));

test("left to right, worked out by hand", () =>
  expect(linesOf("left to right")).toEqual([
    "  - thermometer: r3c9 r3c8 r4c7",
    "  - quadruple: { at: r3c4, digits: 1 2 }",
    "  - x-sum: { grid: north, row: 2, from: right, sum: 9 }",
    "  - skyscraper: { grid: north, column: 2, from: bottom, sees: 3 }",
    "  - diagonals: { grids: [south], which: up }",
    "  - little-killer: { cells: r7c5-r10c2, sum: 9 }",
  ]));

describe.each(turns)("$name", (turn) => {
  test("makes a sound puzzle", () => expect(puzzleOf(write(turned(puzzle, turn)))).toEqual(turned(puzzle, turn)));
  test("and back is where it was", () =>
    expect(turned(turned(puzzle, turn), inverse(turn))).toEqual(turned(puzzle, turns[0]!)));
  test("swaps boxes' rows and columns with the sheet's", () => {
    const [north] = turned(puzzle, turn).grids;
    expect(north!.box).toEqual(turn.swap ? { rows: 3, columns: 2 } : { rows: 2, columns: 3 });
    expect(north!.regions!.slice(0, 6).join("")).toBe(turn.swap ? "aabbcc" : "aaabbb");
  });
});

test("four quarters are none", () => {
  const right = named("a quarter to the right");
  const four = [1, 2, 3, 4].reduce((before) => turned(before, right), turned(puzzle, turns[0]!));
  expect(four).toEqual(turned(puzzle, turns[0]!));
});

test("a line that counts columns is not mirrored", () => {
  const index = puzzleOf("puzzle: 1\ntitle: T\ngrids: [{ id: main, size: 4 }]\nrules: [index-line: { row: 2 }]\n");
  expect(turns.filter((turn) => mayTurn(index, turn)).map(({ name }) => name)).toEqual(["as it is", "rows to columns"]);
});

describe("renaming digits", () => {
  const swap = (digit: number): number => [0, 2, 1, 4, 3][digit]!;
  const mirror = (digit: number): number => 5 - digit;
  const withRule = (rule: string, digits = "1-4") =>
    puzzleOf(
      `puzzle: 1\ntitle: T\ngrids: [{ id: main, size: 4, digits: ${digits} }]\ngivens: { cells: { r1c1: 1 } }\nrules: [${rule}]\n`,
    );

  test("any names where the rules let it", () =>
    expect([...relabelled(withRule("palindrome: r1c1 r1c2 r2c2"), swap)!.givens]).toEqual([[0, 2]]));
  test("mirrored names alone where a rule counts differences", () => {
    expect(relabelled(withRule("kropke-white: r1c1 r1c2"), swap)).toBeUndefined();
    expect([...relabelled(withRule("kropke-white: r1c1 r1c2"), mirror)!.givens]).toEqual([[0, 4]]);
  });
  test("not mirrored where the digits are no run", () =>
    expect(relabelled(withRule("kropke-white: r1c1 r1c2", '"1 2 3 5"'), (digit) => 6 - digit)).toBeUndefined());
  test("none where a rule counts", () => expect(relabelled(withRule("xv-v: r1c1 r1c2"), mirror)).toBeUndefined());
});
