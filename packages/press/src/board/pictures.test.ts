import { readFileSync } from "node:fs";
import { type Board, compile, type Step } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { type BoardOptions, boardSvg } from "./board-svg.ts";

const root = new URL("../../../../", import.meta.url);
const paperMill = compile(puzzleOf(readFileSync(new URL("examples/paper-mill.puzzle.yaml", root), "utf8")));

const boardOf = (grids: string, rules: string, givens = "{}"): Board =>
  compile(
    puzzleOf(`
puzzle: 1
title: Picture
setter: { name: Nobody, permission: own }
grids:
${grids}
givens: { cells: ${givens} }
rules:
${rules}
`),
  );

const nothing: Step["because"] = {
  facts: {},
  spots: [],
  relations: [],
  houses: [],
  rules: [],
  recalls: [],
  limits: [],
};
const blank = {
  n: 1,
  technique: "test",
  level: 1,
  places: {},
  removes: {},
  spots: [],
  relates: [],
  say: "",
  seconds: 1,
};

/** The eighth beat of Paper Mill: 7 and 8 stay outside the yard. */
const outside: BoardOptions = {
  written: { settled: { r10c6: 8, r11c6: 2, r11c7: 1 } },
  step: {
    ...blank,
    places: { r4c5: 7 },
    because: {
      ...nothing,
      facts: { r11c6: [2] },
      houses: ["mill/region/b", "mill/column/6"],
      rules: ["xv-x/1"],
      limits: ["r4c6", "r4c7", "r4c8", "r5c6", "r5c7", "r5c8"],
    },
  },
  next: { r4c6: 3, r5c5: 8 },
  letters: [
    { letter: "a", of: { cells: ["r4c6", "r4c7", "r4c8", "r5c6", "r5c7", "r5c8"] } },
    { letter: "b", of: { rule: "xv-x/1" } },
    { letter: "c", of: { cells: ["r11c6"] } },
  ],
};

const nine = "  - { id: g, size: 9 }";
const marked = boardOf(
  nine,
  "  - cage: { cells: r2c1 r2c2, sum: 13 }\n  - whisper: r1c3 r2c3 r3c3",
  "{ r1c1: 6, r3c2: 1 }",
);
const marks: BoardOptions = {
  written: {
    settled: { r2c1: 5, r1c3: 8, r2c3: 3 },
    marks: {
      r4c1: [1, 4],
      r4c2: [1, 4, 6],
      r4c3: [1, 2, 4, 6],
      r4c4: [1, 2, 4, 6, 7],
      r4c5: [1, 2, 3, 4, 6, 7, 9],
      r5c2: [2, 5, 8],
      r7c7: [4],
    },
    spots: [
      { digit: 7, house: "g/row/6", cells: ["r6c4", "r6c6"] },
      { digit: 3, house: "g/column/9", cells: ["r1c9", "r3c9"] },
      { digit: 5, house: "g/region/i", cells: ["r7c8", "r9c9"] },
      { digit: 8, house: "g/row/7", cells: ["r7c8"] },
    ],
  },
  step: {
    ...blank,
    removes: { r5c2: [2] },
    spots: [{ digit: 9, house: "g/region/h", cells: ["r8c4", "r8c6"] }],
    because: nothing,
  },
  writes: { cells: { r9c2: [3, 4] } },
  chosen: ["r7c7"],
};

const review: BoardOptions = {
  written: { settled: { r1c1: 4, r2c2: 7, r5c5: 3, r6c5: 8 } },
  step: {
    ...blank,
    assume: { r5c1: 3 },
    removes: { r5c1: [3] },
    relates: [{ same: ["r1c7", "r3c8"] }, { less: ["r1c3", "r1c5"] }, { sum: ["r3c1", "r3c3"], is: 13 }],
    because: { ...nothing, relations: [{ parity: ["r8c7", "r8c9"], is: "same" }] },
  },
  slips: ["r1c1"],
  leaps: ["r2c2"],
  clashes: ["r9c1"],
  differ: ["r5c5", "r6c5"],
  shading: { rain: ["r7c1", "r7c2"], weave: ["r7c3", "r7c4"], scale: ["r7c5", "r7c6"] },
};

const three = boardOf(
  "  - { id: a, size: 6 }\n  - { id: b, size: 6, at: r4c3 }\n  - { id: c, size: 4, at: r3c2 }",
  "  - own-rule: { says: The two ends of this line are one apart from its middle., cells: r1c1 r2c2 r3c2, drawn: line }\n  - own-rule: { says: One of these is a 1., cells: r8c7 r8c8 r9c8, drawn: area }\n  - own-rule: { says: These dots agree., cells: r7c3 r9c4, drawn: dots }\n  - anti-knight",
);

const pictures: readonly (readonly [string, Board, BoardOptions])[] = [
  ["paper-mill", paperMill, {}],
  ["paper-mill-step", paperMill, outside],
  ["paper-mill-step-dark", paperMill, { ...outside, theme: "dark", painted: true }],
  ["paper-mill-page", paperMill, { ...outside, theme: "variables", lens: "mill" }],
  ["paper-mill-line", paperMill, { ringed: ["palindrome/1"], lens: "yard", coordinates: true }],
  ["three-sheets", three, {}],
  ["marks", marked, marks],
  ["review", boardOf(nine, "  []"), review],
];

test.each(pictures)("%s is drawn as before", async (name, board, options) => {
  await expect(`${boardSvg(board, { cell: 48, ...options })}\n`).toMatchFileSnapshot(`../../pictures/${name}.svg`);
});
