import { readFileSync } from "node:fs";
import { accept, compile, read } from "@solvewright/engine";
import { expect, test } from "vitest";
import { pageDataOf } from "./page-data-of.ts";

const boardOf = (text: string) => compile(accept(read(text))!);
const mill = boardOf(readFileSync(new URL("../../../../examples/paper-mill.puzzle.yaml", import.meta.url), "utf8"));
const small = (rules: string) =>
  boardOf(`puzzle: 1\ntitle: Small\ngrids: [{ id: main, called: the grid, size: 4 }]\nrules:\n${rules}`);
const cellOf = (data: ReturnType<typeof pageDataOf>, row: number, column: number) =>
  data.cells[data.places.findIndex((place) => place.row === row && place.column === column)]!;

test("a cell of two grids has both names, the topmost grid's first", () => {
  expect(cellOf(pageDataOf(mill), 4, 6).said).toBe("row 4, column 1 of the yard and row 1, column 6 of the mill");
  expect(cellOf(pageDataOf(mill), 11, 1).said).toBe("row 8, column 1 of the mill");
});

test("clues are heard by what they are to the cell", () => {
  const data = pageDataOf(mill);
  expect(cellOf(data, 11, 6).clues).toEqual(["cage of 3", "X above"]);
  expect(cellOf(data, 2, 8).clues).toEqual(["renban line, 3 of 3"]);
  expect(cellOf(data, 4, 5).clues).toEqual(["X to the right"]);
});

test("a sign that tells its ends apart says which end this is", () => {
  const data = pageDataOf(small("  - greater-than: [r1c1 r1c2]"));
  expect(cellOf(data, 1, 1).clues).toEqual(["greater-than sign to the right, this is the greater"]);
  expect(cellOf(data, 1, 2).clues).toEqual(["greater-than sign to the left, this is the smaller"]);
});

test("what a missing mark means is said where no rule says it", () => {
  expect(pageDataOf(mill).missing).toEqual(["Neighbours without an X or V may be any digits."]);
  expect(pageDataOf(small("  - kropke-white: [r1c1 r1c2]")).missing).toEqual([
    "Neighbours without a dot may be any digits.",
  ]);
  expect(pageDataOf(small("  - kropke-white: [r1c1 r1c2]\n  - all-dots-shown")).missing).toEqual([]);
});

test("nothing of what the setter has agreed to goes out, and no solution", () => {
  const text = JSON.stringify(pageDataOf(mill));
  expect(text).not.toMatch(/granted|permission|solution/);
  expect(pageDataOf(mill).setters).toEqual([{ name: "Maud Ferrier" }]);
});

test("it is plain JSON", () => {
  expect(JSON.parse(JSON.stringify(pageDataOf(mill)))).toEqual(pageDataOf(mill));
});
