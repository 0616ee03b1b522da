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
    const state = without(board, startOf(board), { r1c1: [3], r1c3: [3], r1c5: [3], r1c6: [3] });
    // The 3 of row 1 is in column 2 or 4: r3c3 is a knight's move from both, r2c2 and r2c4 from one, below the other.
    const gone = found("seen-everywhere", board, state).map(({ removes }) => removes);
    expect(gone).toEqual([{ r2c2: [3] }, { r2c4: [3] }, { r3c3: [3] }]);
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
  test("naked-triple, naked-quad and hidden-triple: as many digits as cells, though no cell holds them all", () => {
    const board = one("size: 6, regions: none");
    const triple = without(board, startOf(board), { r1c1: [3, 4, 5, 6], r1c2: [1, 4, 5, 6], r1c3: [2, 4, 5, 6] });
    const rest = { r1c4: [1, 2, 3], r1c5: [1, 2, 3], r1c6: [1, 2, 3] };
    expect(found("naked-triple", board, triple)).toEqual([{ places: {}, removes: rest }]);
    const quad = without(board, startOf(board), { r1c1: [5, 6], r1c2: [4, 5, 6], r1c3: [1, 5, 6], r1c4: [2, 5, 6] });
    expect(found("naked-quad", board, quad)).toEqual([
      { places: {}, removes: { r1c5: [1, 2, 3, 4], r1c6: [1, 2, 3, 4] } },
    ]);
    const hidden = without(board, startOf(board), { r1c4: [1, 2, 3], r1c5: [1, 2, 3], r1c6: [1, 2, 3], r1c1: [3] });
    expect(found("hidden-triple", board, hidden)).toEqual([
      { places: {}, removes: { r1c1: [4, 5, 6], r1c2: [4, 5, 6], r1c3: [4, 5, 6] } },
    ]);
  });
  test("house-cases: two pairs and a cell that holds one digit of each leave the row nothing but a sixth", () => {
    const board = one("size: 6, regions: none");
    const five = without(board, startOf(board), {
      r1c1: [3, 4, 5, 6],
      r1c2: [1, 4, 5, 6],
      r1c3: [1, 2, 5, 6],
      r1c4: [1, 2, 3, 6],
      r1c5: [2, 3, 4, 6],
    });
    expect(found("house-cases", board, five)).toContainEqual(places("r1c6", 6));
  });
  test("clue-cases: two cells of a cage of 4 are 1 and 3; a dot leaves no digit without its partner", () => {
    const board = one(six, "rules:\n  - cage: { cells: r1c1 r1c2, sum: 4 }\n  - kropke-black: [r5c5 r5c6]\n");
    expect(found("clue-cases", board)).toEqual(
      expect.arrayContaining([removes({ r1c1: [2, 4, 5, 6], r1c2: [2, 4, 5, 6] }), removes({ r5c5: [5], r5c6: [5] })]),
    );
  });
  test("only-place-by-clues: dots bar the other places that are left", () => {
    const board = one(six, "rules:\n  - kropke-black: [r1c1 r2c1, r1c2 r2c2]\n");
    const state = without(board, startOf(board), { r1c3: [5] });
    expect(found("only-place-by-clues", board, state)).toContainEqual(places("r2c3", 5));
  });
  test("locked across two grids that share cells, and into a cage", () => {
    const grids = "  - { id: a, size: 4 }\n  - { id: b, size: 4, at: r3c3 }\n";
    const board = boardOf(grids);
    // The shared box keeps its 1 in its top row for the one grid, so the other has none in the rest of that row.
    const state = without(board, startOf(board), { r4c3: [1], r4c4: [1] });
    const gone = found("locked", board, state);
    expect(gone).toEqual(
      expect.arrayContaining([removes({ r3c1: [1], r3c2: [1] }), removes({ r3c5: [1], r3c6: [1] })]),
    );
    const caged = one("size: 4, regions: none", "rules:\n  - cage: { cells: r1c1 r1c2 r2c2 }\n");
    const kept = without(caged, startOf(caged), { r1c3: [1], r1c4: [1] });
    expect(found("locked", caged, kept)).toContainEqual({ places: {}, removes: { r2c2: [1] } });
  });
  test("sums-left: what sticks out of a row, and the difference of one in and one out", () => {
    const board = one(
      "size: 4, regions: none",
      "rules:\n  - cage: [{ cells: r1c1 r1c2 r2c1, sum: 7 }, { cells: r1c3 r1c4, sum: 7 }]\n",
    );
    expect(found("sums-left", board)).toContainEqual(places("r2c1", 4));
    const inOut = one(
      "size: 4, regions: none",
      "rules:\n  - cage: [{ cells: r1c1 r1c2 r2c1, sum: 9 }]\n  - cage: [{ cells: r4c1 r4c2 r4c3, sum: 6 }]\n",
    );
    expect(found("sums-left", inOut)).toContainEqual(places("r4c4", 4));
  });
  test("joint-cases: two cages that share a cell agree on it", () => {
    const board = one("size: 6, regions: none", "rules:\n  - thermometer: [r1c1-r1c4, r1c4 r2c4 r3c4]\n");
    // Six cells climb inside 1 to 6 along both together: each is pinned.
    expect(found("joint-cases", board)).toEqual(
      expect.arrayContaining([places("r1c1", 1), places("r1c4", 4), places("r3c4", 6)]),
    );
  });
});

describe("where each technique must stay silent", () => {
  const none = (name: string, board: Board, state = startOf(board)) => expect(found(name, board, state)).toEqual([]);
  test("last-cell: with two open cells", () =>
    none("last-cell", one("size: 4, regions: none", givens("r1c1: 1, r1c2: 2"))));
  test("only-place: with two places; only-digit: with two digits", () => {
    none("only-place", one(six, givens("r1c4: 5, r6c2: 5")));
    none("only-digit", one("size: 4", givens("r1c2: 1, r2c1: 2")));
  });
  test("clue-forces: a white dot with two partners; a cage with two open cells", () => {
    none("clue-forces", one(six, `${givens("r1c1: 3")}rules:\n  - kropke-white: [r1c1 r1c2]\n`));
    none("clue-forces", one(six, `${givens("r1c1: 3")}rules:\n  - cage: { cells: r1c1 r1c2 r1c3, sum: 10 }\n`));
  });
  test("clue-cases: a cage that every digit fits, a black dot inside 1 to 4", () => {
    none("clue-cases", one(six, "rules:\n  - cage: { cells: r1c1 r1c2, sum: 7 }\n"));
    none("clue-cases", one("size: 4, digits: '1 2 4 8', regions: none", "rules:\n  - kropke-black: [r1c1 r1c2]\n"));
  });
  test("smaller-grid-leaves: where the smaller grid covers less of the row than it has digits", () =>
    none(
      "smaller-grid-leaves",
      boardOf("  - { id: big, size: 8, regions: boxes 2x4 }\n  - { id: small, size: 6, at: r4c4 }\n"),
    ));
  test("naked and hidden pairs: three digits in two cells, two digits in three places", () => {
    const board = one("size: 5, regions: none");
    const three = without(board, startOf(board), { r1c1: [4, 5], r1c2: [4, 5] });
    none("naked-pair", board, three);
    none("hidden-pair", board, without(board, startOf(board), { r1c4: [1, 2], r1c5: [1, 2] }));
    none("naked-triple", board, three);
  });
  test("naked-pair: a pair in cells that share no house", () => {
    const board = one("size: 4, regions: none");
    none("naked-pair", board, without(board, startOf(board), { r1c1: [3, 4], r2c2: [3, 4] }));
  });
  test("locked: places in two rows and two columns of a box", () => {
    const board = one("size: 4");
    none("locked", board, without(board, startOf(board), { r1c1: [1], r2c2: [1] }));
  });
  test("seen-everywhere: one place is out of the knight's reach", () => {
    const board = one("size: 5, regions: none", "rules: [anti-knight]\n");
    // In row 1 the 3 is in column 1 or 4: no cell elsewhere is seen from both, by column or by a knight's move.
    const state = without(board, startOf(board), { r1c2: [3], r1c3: [3], r1c5: [3] });
    expect(found("seen-everywhere", board, state)).toEqual([]);
  });
  test("only-place-by-clues: a second place that no clue bars", () => {
    const board = one(six, "rules:\n  - kropke-black: [r1c1 r2c1, r1c2 r2c2]\n");
    none("only-place-by-clues", board);
  });
  test("sums-left: a cage that leaves five cells of a row", () =>
    none("sums-left", one("size: 7, regions: none", "rules:\n  - cage: { cells: r1c1 r1c2, sum: 13 }\n")));
  test("joint-cases: two cages apart", () =>
    none(
      "joint-cases",
      one("size: 4, regions: none", "rules:\n  - cage: [{ cells: r1c1 r2c1, sum: 5 }, { cells: r3c3 r4c3, sum: 5 }]\n"),
    ));
  test("an empty board gives nothing to any of them", () => {
    const board = one(six);
    for (const { name } of techniques) expect(found(name, board), name).toEqual([]);
  });
});
