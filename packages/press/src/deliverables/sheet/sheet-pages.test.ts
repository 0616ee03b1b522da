import { type Board, compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { balancedHeight, columnsOf } from "../../paper/columns.ts";
import { a4, letter, margin } from "../../paper/paper.ts";
import { rulesRows } from "./rules-rows.ts";
import { sheetPages } from "./sheet-pages.ts";

const boardOf = (text: string): Board => compile(puzzleOf(`puzzle: 1\ntitle: Low Water\n${text}\n`));
const grid = (size: number, at = "r1c1", id = "main"): string => `{ id: ${id}, size: ${size}, at: ${at} }`;

const viewBox = (page: string): number[] => /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(page)!.slice(1).map(Number);

/** Where the board lies on its page, in points. */
const boardBox = (page: string) => {
  const [, x, y] = /<svg x="([\d.]+)" y="([\d.]+)"/.exec(page)!.map(Number);
  const [, width, height] = /<svg x=.*?width="([\d.]+)" height="([\d.]+)"/s.exec(page)!.map(Number);
  return { left: x!, top: y!, right: x! + width!, bottom: y! + height! };
};

test.each([
  ["a small board", `grids: [${grid(4)}]`],
  ["a usual board", `grids: [${grid(9)}]`],
  ["a very large board", `grids: [${grid(25)}]`],
  [
    "five grids",
    `grids: [${[
      ["a", "r1c1"],
      ["b", "r1c13"],
      ["c", "r7c7"],
      ["d", "r13c1"],
      ["e", "r13c13"],
    ]
      .map(([id, at]) => grid(9, at, id))
      .join(", ")}]`,
  ],
])("%s stands on one page with its rules, inside the margins of every paper", (_, text) => {
  for (const paper of [a4, letter]) {
    const pages = sheetPages({ board: boardOf(text), paper });
    expect(pages).toHaveLength(1);
    expect(pages[0]).toContain("once each");
    const { left, top, right, bottom } = boardBox(pages[0]!);
    const [width, height] = viewBox(pages[0]!) as [number, number];
    expect(Math.min(left, top)).toBeGreaterThanOrEqual(margin - 0.01);
    expect(right).toBeLessThanOrEqual(width - margin + 0.1);
    expect(bottom).toBeLessThanOrEqual(height - margin);
  }
});

test("a wide row of grids lies on a page turned sideways", () => {
  const row = ["r1c1", "r1c7", "r1c13", "r1c19"].map((at, k) => grid(9, at, `g${k}`)).join(", ");
  const [width, height] = viewBox(sheetPages({ board: boardOf(`grids: [${row}]`), paper: a4 })[0]!) as [number, number];
  expect([width, height]).toEqual([a4.height, a4.width]);
});

test("rules that leave no room for the board go on to pages of their own, and none is lost", () => {
  const rules = Array.from(
    { length: 30 },
    (_, k) =>
      `  - own-rule: { says: "Rule number ${k}: ${"the lanterns are lit from the harbour side, ".repeat(5)}so." }`,
  );
  const pages = sheetPages({ board: boardOf(`grids: [${grid(6)}]\nrules:\n${rules.join("\n")}`), paper: letter });
  expect(pages.length).toBeGreaterThan(1);
  const all = pages
    .join("\n")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
  for (let k = 0; k < 30; k++) expect(all).toContain(`Rule number ${k}:`);
});

test("the puzzle's sheet has empty cells, the solution's a digit in each", () => {
  const board = boardOf(`grids: [${grid(4)}]`);
  const settled = Object.fromEntries(board.canvas.names.map((name) => [name, 3]));
  const digits = (pages: readonly string[]): number => (pages.join().match(/>3<\/text>/g) ?? []).length;
  expect(digits(sheetPages({ board, paper: a4 }))).toBe(0);
  expect(digits(sheetPages({ board, paper: a4, settled, after: "the solution" }))).toBeGreaterThanOrEqual(16);
});

test("no rule of a few lines is parted between columns", () => {
  const board = boardOf(
    `grids: [${grid(6)}]\nrules:\n  - sandwich: { row: 1, sum: 4 }\n  - { thermometer: r1c1-r1c3 }\n  - { palindrome: r2c1-r2c3 }`,
  );
  const rows = rulesRows(board, { width: 150, scale: 1.25 });
  const columns = columnsOf(rows, [balancedHeight(rows, 2)]);
  expect(columns).toHaveLength(2);
  for (const column of columns) expect(column.at(-1)!.keepsWithNext ?? false).toBe(false);
  expect(rows.filter(({ keepsWithNext }) => keepsWithNext).length).toBeGreaterThan(3);
});
