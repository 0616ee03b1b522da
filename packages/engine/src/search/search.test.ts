import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { finished } from "../finished.ts";
import { clash } from "./clash.ts";
import { count } from "./count.ts";
import { openCells } from "./possibilities.ts";
import { solve } from "./solve.ts";
import { judging } from "./soundness.ts";
import { worth } from "./worth.ts";

const boardOf = (grid: string, rest = "") =>
  compile(
    puzzleOf(`puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, ${grid} }\n${rest}`),
  );

describe("how many filled grids there are", () => {
  // OEIS A002860: Latin squares of order 1 to 5.
  test.each([
    [1, 1],
    [2, 2],
    [3, 12],
    [4, 576],
    [5, 161280],
  ])("Latin squares of order %i: %i", (size, many) =>
    expect(count(boardOf(`size: ${size}, regions: none`), 1_000_000)).toMatchObject({ count: many }),
  );
  // OEIS A107739: filled 4x4 grids with boxes.
  test("4x4 with boxes: 288", () => expect(count(boardOf("size: 4"), 1000)).toMatchObject({ count: 288 }));
  // PUBLISHED.md, counted for this project by two independent methods.
  test.each([
    ["diagonals", 48],
    ["anti-king", 0],
    ["anti-knight", 24],
    ["non-consecutive", 0],
    ["disjoint-groups", 168],
  ])("4x4 with boxes and %s: %i", (kind, many) =>
    expect(count(boardOf("size: 4", `rules: [${kind}]\n`), 1000)).toMatchObject({ count: many }),
  );
});

const soundness = (board: ReturnType<typeof boardOf>) => finished(judging(board));

describe("soundness", () => {
  const several = boardOf("size: 4", "givens:\n  main: |\n    1234\n    3412\n    ....\n    ....\n");
  test("several: two solutions, and they differ just where it says", () => {
    const { verdict, solutions, differ } = soundness(several);
    expect(verdict).toBe("several");
    const [one, other] = solutions;
    expect([...one!.keys()].filter((cell) => one![cell] !== other![cell])).toEqual(differ);
    expect(openCells(several)).toEqual(expect.arrayContaining([...differ]));
  });
  test("none: a clash of which nothing can be dropped", () => {
    const none = boardOf(
      "size: 4",
      "givens: { cells: { r1c1: 1, r2c3: 2 } }\nrules:\n  - cage: { cells: r1c2 r1c3, sum: 3 }\n",
    );
    expect(soundness(none).verdict).toBe("none");
    // The cage of 3 is 1 and 2, and the row has its 1 already.
    expect(clash(none)).toMatchObject({ rules: ["cage/1"], houses: ["main/row/1"], minimal: true });
  });
  test("worth: a given that the others imply is spare, the rest are needed", () => {
    const board = boardOf("size: 4", "givens:\n  main: |\n    12.4\n    34..\n    2...\n    ..1.\n");
    const [solution] = solve(board, { limit: 2 }).solutions;
    const { givens } = worth(board, solution!);
    for (const [cell, value] of givens) {
      const fewer = { ...board, givens: new Map([...board.givens].filter(([other]) => other !== cell)) };
      expect(soundness(fewer).verdict === "one").toBe(value === "redundant");
    }
  });
});
