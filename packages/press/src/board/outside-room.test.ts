import { compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { extentOf, shared, together } from "../scene/extent.ts";
import { figuresOf } from "../scene/scene.ts";
import { boardScene } from "./board-svg.ts";

const one = "  - { id: g, size: 6 }";
const two = "  - { id: a, size: 4 }\n  - { id: b, size: 4, at: r3c3 }";

const boxes = (grids: string, rules: readonly string[]) => {
  const lines = rules.map((rule) => `  - ${rule}\n`).join("");
  const board = compile(puzzleOf(`puzzle: 1\ntitle: Beside\ngrids:\n${grids}\nrules:\n${lines}`));
  const figures = figuresOf(boardScene(board).scene).filter(({ layer }) => layer === "outside");
  return new Map(
    board.rules.map(({ id }) => [id, together(figures.filter(({ of }) => of === id).map(extentOf))!] as const),
  );
};

test.each([
  [
    "a diagonal's number beside a column's",
    one,
    ["sandwich: { column: 1, sum: 5 }", "little-killer: { cells: r1c2-r5c6, sum: 17 }"],
  ],
  [
    "three above one column",
    one,
    [
      "sandwich: { column: 2, sum: 5 }",
      "x-sum: { column: 2, from: top, sum: 12 }",
      "skyscraper: { column: 2, from: top, sees: 3 }",
    ],
  ],
  [
    "two on the right of a row",
    one,
    ["x-sum: { row: 2, from: right, sum: 12 }", "frame-sum: { row: 2, from: right, sum: 9 }"],
  ],
  ["a number and the pointer of an index line", one, ["index-line: { column: 3 }", "sandwich: { column: 3, sum: 7 }"]],
  [
    "two among the cells of another grid",
    two,
    ["sandwich: { grid: b, column: 1, sum: 5 }", "skyscraper: { grid: b, column: 1, from: top, sees: 3 }"],
  ],
] as const)("%s do not stand on each other", (_, grids, rules) => {
  const all = [...boxes(grids, rules).values()];
  for (const [k, box] of all.entries()) for (const other of all.slice(k + 1)) expect(shared(box, other)).toBe(0);
});

test("a clue among the cells of another grid stays among them", () => {
  const sandwich = "sandwich: { grid: b, column: 1, sum: 5 }";
  const moved = boxes(two, [sandwich, "skyscraper: { grid: b, column: 1, from: top, sees: 3 }"]).get("skyscraper/1")!;
  expect([moved.top > 1, moved.bottom < 2]).toEqual([true, true]);
});

test("a clue that is alone in its place keeps it, and so does one at a corner", () => {
  const sandwich = "sandwich: { column: 1, sum: 5 }";
  const killer = "little-killer: { cells: r1c2-r5c6, sum: 17 }";
  const both = boxes(one, [sandwich, killer]);
  expect(both.get("little-killer/1")).toEqual(boxes(one, [killer]).get("little-killer/1"));
  const alone = boxes(one, [sandwich]).get("sandwich/1")!;
  expect(boxes(one, [sandwich, "sandwich: { column: 2, sum: 5 }"]).get("sandwich/1")).toEqual(alone);
  expect(both.get("sandwich/1")!.left).toBeCloseTo(alone.left);
  expect(both.get("sandwich/1")!.bottom).toBeLessThan(alone.bottom);
});
