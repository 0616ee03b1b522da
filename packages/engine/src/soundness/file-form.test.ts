import { expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import type { Puzzle, RuleEntry } from "../puzzle/puzzle.ts";
import { fileForm, fileLine } from "./file-form.ts";

const rules = ["palindrome: r1c1 r1c2", "kropke-white: { cells: r1c3 r1c4, by: 2 }", "anti-knight"];
const puzzle = puzzleOf(tiny(rules));
const board = compile(puzzle);
const mendOf = (some: readonly RuleEntry[]) =>
  ({ change: "remove", givens: new Map([[5, 3]]), rules: some, verdict: "one" }) as const;

test("a given and rules as the file has them", () =>
  expect(fileForm(board, mendOf(puzzle.rules))).toEqual([
    { r2c2: 3 },
    { palindrome: "r1c1 r1c2" },
    { "kropke-white": { cells: "r1c3 r1c4", by: 2 } },
    "anti-knight",
  ]));

const read = (lines: readonly string[]): Puzzle => puzzleOf(tiny(lines));
test("their lines read as the same rules, of kinds that the puzzle has or not", () => {
  const other = read(["even: r1c1"]);
  const lines = fileForm(compile(other), mendOf(puzzle.rules)).slice(1).map(fileLine);
  expect(read(lines).rules).toEqual(puzzle.rules);
});
