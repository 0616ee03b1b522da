import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { randomFrom } from "../../test-kit/random.ts";
import { compile } from "../board/compile.ts";
import { fingerprint } from "../puzzle/fingerprint.ts";
import { readTake } from "./read-take.ts";
import { takeForm } from "./take.ts";

const board = compile(puzzleOf("puzzle: 1\ntitle: Small\ngrids: [{ id: main, size: 4 }]\n"));
const house = board.houses[0]!.id;
const whole = {
  take: 1,
  puzzle: fingerprint(board.puzzle),
  slate: 2.5,
  ends: 90,
  entries: [
    { at: 12, cell: "r1c1", marks: [1, 2] },
    { at: 13.25, spot: 4, house, cells: ["r1c2", "r1c3"] },
    { at: 20, cell: "r1c1", settle: 2 },
    { at: 21, cell: "r1c1", clear: true },
  ],
};
const text = (changes: object = {}): string => JSON.stringify({ ...whole, ...changes }, null, 1);
const told = (source: string) => readTake(source, board).problems;

test("a take is read as it was written, and its form takes it", () => {
  const { take: _, ...read } = whole;
  expect(readTake(text(), board)).toEqual({ take: read, problems: [] });
  expect(z.safeParse(takeForm, whole).success).toBe(true);
});

describe("what is wrong is told at its place, with what would be right", () => {
  test("a take of another puzzle", () =>
    expect(told(text({ puzzle: "0123456789abcdef" }))).toMatchObject([
      {
        line: 3,
        column: 12,
        read: expect.stringContaining("another puzzle"),
        right: expect.stringContaining(whole.puzzle),
      },
    ]));
  test("several faults together", () => {
    const entries = [
      { at: 5, cell: "r9c9", settle: 3 },
      { at: 4, cell: "r1c1", settle: 99 },
      { at: 6, cel: "r1c1" },
      7,
    ];
    expect(told(text({ entries })).map(({ path }) => path)).toEqual([
      "entries/0/cell",
      "entries/1/at",
      "entries/1/settle",
      "entries/2",
      "entries/3",
    ]);
  });
  test("a key too many, a key too few", () => {
    const entries = [
      { at: 5, cell: "r1c1", settle: 3, colour: "red" },
      { cell: "r1c1", clear: true },
    ];
    expect(told(text({ entries }))).toMatchObject([
      { path: "entries/0/colour", right: expect.stringContaining("one of the keys") },
      { path: "entries/1", read: "no at", right: expect.stringContaining("in seconds") },
    ]);
  });
  test("an unknown house", () =>
    expect(told(text({ entries: [{ at: 1, spot: 1, house: "attic", cells: [] }] }))).toMatchObject([
      { path: "entries/0/house", read: "attic" },
    ]));
  test("an entry after the end, a slate after the end", () =>
    expect(told(text({ slate: 91, entries: [{ at: 95, cell: "r1c1", clear: true }] }))).toHaveLength(2));
  test("no entries", () => expect(told(text({ entries: undefined }))).toMatchObject([{ read: "no entries" }]));
  test("a comma missing", () =>
    expect(told('{ "take": 1\n  "slate": 2 }')).toMatchObject([
      { line: 2, column: 3, read: '"slate": 2 }', right: "a comma or }" },
    ]));
  test("a key twice", () =>
    expect(told(text().replace('"slate"', '"slate": 1, "slate"'))).toMatchObject([{ read: "the key slate twice" }]));
});

test.each(["", "   ", "[]", "null", "{", '{"a":', "[".repeat(100_000), '"\\u12"', "NaN", "\ufeff{}", "[1,]"])(
  "%.20s is no take",
  (source) => expect(told(source)).not.toEqual([]),
);

/** Every letter of a take changed, left out or doubled: nothing throws. */
test("reading never throws", () => {
  const [random, source] = [randomFrom(7), text()];
  for (let run = 0; run < 400; run++) {
    const at = random.below(source.length);
    const put = random.pick(["", "x", '"', "{", "]", "1e999", "\u0000", source[at]! + source[at]!]);
    const { take, problems } = readTake(source.slice(0, at) + put + source.slice(at + 1), board);
    expect(take === undefined).toBe(problems.length > 0);
  }
});
