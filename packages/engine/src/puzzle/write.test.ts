import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import type { Draft } from "./puzzle.ts";
import { write } from "./write.ts";

const plain = puzzleOf(`puzzle: 1
title: Plain
grids:
  - { id: main, size: 4 }
rules:
  - own-rule: { says: x, cells: r1c1 }
`);

const awkward = [
  "Salt: Sand",
  "- dash",
  "# no comment",
  "yes",
  "null",
  "~",
  "12",
  "0123",
  "1e3",
  "0x1F",
  ".5",
  "a, b] } c",
  "[list]",
  "{ keys: 1 }",
  "'single' \"double\"",
  "back\\slash",
  "*star &and !mark %per @at `tick`",
  "| pipe > more",
  "a: b: c",
  "ends with a colon:",
  "Łódź ≤ 5 → 😀",
  "tab\there",
  "x".repeat(180),
];
const blocks = [
  "one line\n",
  "two\nlines",
  "two\nlines\n",
  "a\n\nparagraph\n",
  "ends with blank lines\n\n\n",
  "  starts with blanks\nand goes on\n",
  "\nstarts with a line\n",
  "trailing blanks  \nhere\n",
  "# looks like\n# comments\n",
  "key: value\n- item\n",
  "carriage\r\nreturn\n",
  "next line\u0085and\u2028others\n",
  "tab\n\tindented\n",
  "---\n...\n",
];

describe.each(awkward)("the text %j", (text) => {
  test("is kept as title, name, wording, sentence and note", () => {
    const [rule] = plain.rules;
    const puzzle = {
      ...plain,
      title: text,
      setters: [
        {
          name: text,
          link: "https://example.org/a?b=c#d",
          permission: { show: "own", page: "asked", print: "unknown", change: "refused" },
        },
      ],
      wording: text,
      grids: plain.grids.map((grid) => ({ ...grid, called: text.slice(0, 60) })),
      rules: [{ ...rule!, body: { ...rule!.body, ...{ says: text, note: text } } }],
    } satisfies Draft;
    expect(puzzleOf(write(puzzle))).toEqual({ ...puzzle, accepted: true });
  });
});

test.each(blocks)("the lines %j are kept", (text) => {
  const puzzle = { ...plain, wording: text, notes: text };
  expect(puzzleOf(write(puzzle))).toEqual(puzzle);
});

const hand = `puzzle: 1
title: Two Ferries
setter: { name: Example Setter, permission: own }
wording: |
  Usual rules in both grids.
  The palindrome reads the same from both ends.
grids:
  - id: north
    size: 4
    at: r1c1
  - id: south
    called: the low grid
    size: 6
    at: r3c3
    digits: 0-5
    regions: |
      aaabbb
      aaabbb
      cccddd
      cccddd
      eeefff
      eeefff
givens:
  north: |
    3 . . .
    1 . . .
    . . . .
    2 . . .
  south: |
    . . . . . .
    . . . . . .
    . . . . . 4
    . . 0 . . .
    . . . . . .
    . . . . . .
rules:
  - palindrome: r4c2 r4c3 r5c4
  - xv-v: [r2c1 r2c2, r4c4 r4c5]
  - cage: { cells: r3c6 r3c7 r4c7, sum: 12 }
  - cage: { cells: r5c5 r6c5, tint: "#7a9e5b", note: "Told by the setter, twice" }
  - kropke-white: r1c1 r1c2
  - kropke-white: { cells: r1c3 r1c4, by: 2 }
  - anti-knight
  - clone: { areas: [r1c2 r1c3, r2c2 r2c3] }
  - quadruple: { at: r6c6, digits: 0 1 }
  - x-sum: { grid: south, row: 2, from: right, sum: 9 }
`;

test("a file written by hand in the same manner comes back letter by letter", () =>
  expect(write(puzzleOf(hand))).toBe(hand));

test("digits above nine stand in columns", () => {
  const puzzle = puzzleOf(
    "puzzle: 1\ntitle: T\ngrids:\n  - { id: main, size: 10 }\ngivens: { cells: { r1c1: 10, r1c3: 2 } }\n",
  );
  expect(write(puzzle)).toContain("\n    10 .  2  .  .  .  .  .  .  .\n");
});

test("many short rules are shared out over lines of at most a hundred characters", () => {
  const pairs = Array.from({ length: 24 }, (_, k) => `r${k + 1}c1 r${k + 1}c2`);
  const puzzle = puzzleOf(
    `puzzle: 1\ntitle: T\ngrids: [{ id: main, size: 25 }]\nrules:\n  - xv-v: [${pairs.join(", ")}]\n`,
  );
  const lines = write(puzzle).split("\n");
  expect(lines.filter((line) => line.includes("xv-v")).length).toBeGreaterThan(2);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
  expect(puzzleOf(write(puzzle))).toEqual(puzzle);
});
