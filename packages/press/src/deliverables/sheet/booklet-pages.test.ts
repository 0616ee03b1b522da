import { compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { a4 } from "../../paper/paper.ts";
import { type BookletPuzzle, bookletPages } from "./booklet-pages.ts";

const titled = (title: string): BookletPuzzle => {
  const board = compile(puzzleOf(`puzzle: 1\ntitle: ${title}\ngrids: [{ id: main, size: 4 }]\n`));
  // No cell of an empty grid bears a 4 on its sheet, so that a solution would be seen.
  return { board, solution: Object.fromEntries(board.canvas.names.map((cell) => [cell, 4])) };
};
const puzzles = ["One", "Two", "Three", "Four", "Five"].map(titled);
const pages = bookletPages({ title: "Five", puzzles, paper: a4 });
const settled = (page: string): number => (page.match(/>4<\/text>/g) ?? []).length;

test("contents, a sheet each, solutions four to a page", () => expect(pages.length).toBe(1 + 5 + 2));
test("every puzzle stands on the page that the contents say", () => {
  for (const [k, title] of ["One", "Two", "Three"].entries()) {
    expect(pages[0]).toContain(`>${title}<`);
    expect(pages[1 + k]).toContain(`>${title}<`);
    expect(pages[1 + k]).toContain(`>${k + 2}</text>`);
  }
  expect(pages[0]).toContain("Solutions from page 7 on");
});
test("solutions stand at the end and nowhere else", () => {
  for (const page of pages.slice(1, 6)) expect(settled(page)).toBeLessThan(2);
  expect(settled(pages[6]!)).toBeGreaterThanOrEqual(4 * 16);
  expect(settled(pages[7]!)).toBeGreaterThanOrEqual(16);
});
