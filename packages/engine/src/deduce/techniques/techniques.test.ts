import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import type { Board } from "../../board/board.ts";
import { compile } from "../../board/compile.ts";
import { type Digits, digitsOf, listOf } from "../../board/digits.ts";
import { type Knowledge, startOf, withRemoved } from "../../board/knowledge.ts";
import { definitionOf } from "../../prove/definition.ts";
import { prove } from "../../prove/prove.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { claimOf } from "../claim.ts";
import type { Deduction } from "../deduction.ts";
import { techniques } from "../registry.ts";

const boardOf = (grids: string, rest = ""): Board =>
  compile(puzzleOf(`puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n${grids}${rest}`));
const one = (grid: string, rest = ""): Board => boardOf(`  - { id: main, ${grid} }\n`, rest);
const without = (board: Board, knowledge: Knowledge, gone: Record<string, number[]>): Knowledge =>
  withRemoved(
    knowledge,
    Object.entries(gone).map(([name, digits]) => [cellNamed(board.canvas, name)!, digitsOf(digits)]),
  );

const said = (board: Board, { places, removes }: Deduction) => ({
  places: Object.fromEntries([...places].map(([cell, digit]) => [board.canvas.names[cell]!, digit])),
  removes: Object.fromEntries(
    [...removes].map(([cell, digits]) => [board.canvas.names[cell]!, listOf(digits as Digits)]),
  ),
});

/** Everything that a technique finds; each must be proved as it stands, before its reasons are made small. */
const found = (name: string, board: Board, knowledge = startOf(board)) => {
  const technique = techniques.find((other) => other.name === name)!;
  const all = [...technique.find(knowledge, board)];
  for (const deduction of all)
    expect(prove(claimOf(board, deduction), definitionOf(board)), JSON.stringify(claimOf(board, deduction))).toEqual({
      verdict: "proved",
    });
  return all.map((deduction) => said(board, deduction));
};

const places = (cell: string, digit: number) => expect.objectContaining({ places: { [cell]: digit } });
const removes = (gone: Record<string, number[]>) => expect.objectContaining({ removes: gone });
const six = "size: 6";
const givens = (cells: string): string => `givens: { cells: { ${cells} } }\n`;

describe("what each technique finds, by its definition in the trade (common practice)", () => {
  test("last-cell: the missing digit of a row", () => {
    const board = one("size: 4, regions: none", givens("r1c1: 1, r1c2: 2, r1c3: 3"));
    expect(found("last-cell", board)).toEqual([{ places: { r1c4: 4 }, removes: {} }]);
  });
  test("only-place: two rows and a column leave one cell of a box", () => {
    const board = one(six, givens("r1c4: 5, r4c1: 5, r6c2: 5"));
    expect(found("only-place", board)).toContainEqual(places("r2c3", 5));
  });
  test("only-digit: a cell that sees all others", () => {
    const board = one("size: 4", givens("r1c2: 1, r2c1: 2, r4c1: 3"));
    expect(found("only-digit", board)).toContainEqual(places("r1c1", 4));
  });
  test("clue-forces: the partner across an X and the rest of a cage", () => {
    const board = one(
      six,
      `${givens("r1c1: 4, r3c3: 1, r3c4: 2")}rules:\n  - xv-x: r1c1 r1c2\n  - cage: { cells: r3c3 r3c4 r3c5, sum: 8 }\n`,
    );
    expect(found("clue-forces", board)).toEqual(expect.arrayContaining([places("r1c2", 6), places("r3c5", 5)]));
  });
  test("clue-cases: a thermometer of n-1 cells on 1 to n leaves two digits a cell", () => {
    const board = one("size: 6, regions: none", "rules:\n  - thermometer: r1c1-r1c5\n");
    const left = found("clue-cases", board).find(({ removes }) => Object.keys(removes).length === 5)!;
    expect(left.removes).toEqual({
      r1c1: [3, 4, 5, 6],
      r1c2: [1, 4, 5, 6],
      r1c3: [1, 2, 5, 6],
      r1c4: [1, 2, 3, 6],
      r1c5: [1, 2, 3, 4],
    });
  });
  test("smaller-grid-leaves: six cells that stop at 6 leave 7 and 8", () => {
    const board = boardOf("  - { id: big, size: 8, regions: boxes 2x4 }\n  - { id: small, size: 6, at: r1c3 }\n");
    const row = { r1c1: [1, 2, 3, 4, 5, 6], r1c2: [1, 2, 3, 4, 5, 6] };
    expect(found("smaller-grid-leaves", board)).toContainEqual({ places: {}, removes: row });
  });
  test("naked-pair and hidden-pair", () => {
    const board = one("size: 4, regions: none");
    const pair = without(board, startOf(board), { r1c1: [3, 4], r1c2: [3, 4] });
    expect(found("naked-pair", board, pair)).toContainEqual(removes({ r1c3: [1, 2], r1c4: [1, 2] }));
    const hidden = without(board, startOf(board), { r1c3: [1, 2], r1c4: [1, 2] });
    expect(found("hidden-pair", board, hidden)).toContainEqual(removes({ r1c1: [3, 4], r1c2: [3, 4] }));
  });
  test("locked: a box keeps its digit in one row", () => {
    const board = one(six);
    const state = without(board, startOf(board), { r2c1: [5], r2c2: [5], r2c3: [5] });
    expect(found("locked", board, state)).toContainEqual(removes({ r1c4: [5], r1c5: [5], r1c6: [5] }));
  });
  test("seen-everywhere: both places are a knight's move away", () => {
    const board = one("size: 6, regions: none", "rules: [anti-knight]\n");
    const state = without(board, startOf(board), { r1c1: [3], r1c4: [3], r1c5: [3], r1c6: [3] });
    expect(
      found("seen-everywhere", board, state).some(({ removes }) => Object.values(removes).flat().includes(3)),
    ).toBe(true);
  });
  test("sums-left: a row of 21 less its cages", () => {
    const board = one(
      "size: 6, regions: none",
      "rules:\n  - cage: [{ cells: r1c1 r1c2, sum: 9 }, { cells: r1c3-r1c5, sum: 8 }]\n",
    );
    expect(found("sums-left", board)).toContainEqual(places("r1c6", 4));
  });
  test("joint-cases: however the cage is filled it uses the 6", () => {
    const board = one("size: 6", "rules:\n  - cage: { cells: r1c1 r1c2, sum: 10 }\n");
    const gone = found("joint-cases", board).flatMap(({ removes }) => Object.entries(removes));
    expect(gone).toEqual(expect.arrayContaining([["r2c1", expect.arrayContaining([4, 6])]]));
  });
  test("an empty board gives nothing to any of them", () => {
    const board = one(six);
    for (const { name } of techniques) expect(found(name, board), name).toEqual([]);
  });
});
