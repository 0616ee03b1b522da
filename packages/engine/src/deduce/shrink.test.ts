import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { type Digits, digitsOf } from "../board/digits.ts";
import { startOf, withRemoved } from "../board/knowledge.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { needless } from "../prove/small.ts";
import { type Cell, cellNamed } from "../puzzle/canvas.ts";
import { claimOf } from "./claim.ts";
import type { Deduction } from "./deduction.ts";
import { type Holds, shrink, widened } from "./shrink.ts";

const board: Board = compile(
  puzzleOf(
    "puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, size: 4, regions: none }\n" +
      "givens: { cells: { r1c1: 1, r1c2: 2, r2c4: 3, r4c4: 2 } }\nrules:\n  - cage: { cells: r1c3 r1c4, sum: 7 }\n",
  ),
);
const about = definitionOf(board);
const holds: Holds = (deduction) => prove(claimOf(board, deduction), about).verdict === "proved";
const cell = (name: string): Cell => cellNamed(board.canvas, name)!;
const facts = (of: Record<string, number[]>): Map<Cell, Digits> =>
  new Map(Object.entries(of).map(([name, digits]) => [cell(name), digitsOf(digits)]));

const deduction = (because: Partial<Deduction["because"]>, places = { r1c4: 4 }): Deduction => ({
  technique: "only-digit",
  level: 1,
  places: new Map(Object.entries(places).map(([name, digit]) => [cell(name), digit])),
  removes: new Map(),
  spots: [],
  relates: [],
  because: { facts: new Map(), spots: [], relations: [], houses: [], rules: [], ...because },
});

const everything = {
  facts: facts({ r1c1: [1], r1c2: [2], r2c4: [3], r4c4: [2], r1c3: [3, 4] }),
  houses: ["main/row/1", "main/column/4", "main/row/3"],
  rules: ["cage/1"],
};

describe("shrink", () => {
  test("drops what the claim stands without, until nothing is needless", () => {
    const small = shrink(deduction(everything), board, holds)!;
    expect(needless(claimOf(board, small), about)).toEqual([]);
    // r1c4 sees 1 and 2 in its row (or the 2 in its column) and the 3 in its column.
    expect(small.because.houses.every((id) => id === "main/row/1" || id === "main/column/4")).toBe(true);
    expect(small.because.houses).not.toContain("main/row/3");
  });
  test("houses are tried before rules: a cage of 7 and a 3 in the column are enough", () => {
    const small = shrink(deduction(everything), board, holds)!;
    expect(claimOf(board, small).because).toMatchObject({
      facts: { r2c4: [3] },
      houses: ["main/column/4"],
      rules: ["cage/1"],
    });
  });
  test("that a digit lies in a cage takes the cage alone: a spot is concluded as well", () => {
    const spots = [{ digit: 3, cells: [cell("r1c3"), cell("r1c4")], house: "cage/1" }];
    const small = shrink({ ...deduction(everything, {} as never), spots }, board, holds)!;
    expect(claimOf(board, small)).toMatchObject({
      spots: [{ digit: 3, cells: ["r1c3", "r1c4"], house: "cage/1" }],
      because: { facts: {}, houses: [], rules: ["cage/1"] },
    });
  });
  test("of two facts that serve alike the farther one goes", () => {
    const small = shrink(deduction({ ...everything, rules: [] }), board, holds)!;
    // The 2 is seen in the row at r1c2, two away, and in the column at r4c4, three away.
    expect([...small.because.facts.keys()]).toContain(cell("r1c2"));
    expect([...small.because.facts.keys()]).not.toContain(cell("r4c4"));
  });
  test("what does not follow is not made small at all", () =>
    expect(shrink(deduction(everything, { r1c4: 3 }), board, holds)).toBeUndefined());
  test("what is small already stays as it is", () => {
    const small = shrink(deduction(everything), board, holds)!;
    expect(shrink(small, board, holds)).toEqual(small);
  });
});

describe("widened", () => {
  const state = withRemoved(startOf(board), [[cell("r2c1"), digitsOf([2, 3])]]);
  test("a fact keeps only what the claim needs of what had to be worked out", () => {
    const no = { ...deduction({ houses: ["main/row/2"], facts: facts({ r2c1: [4], r2c4: [3] }) }), places: new Map() };
    const claimed: Deduction = { ...no, removes: facts({ r2c2: [4] }) };
    expect(widened(claimed, state, board, () => true, holds)).toEqual(claimed);
    const loose: Deduction = {
      ...no,
      removes: facts({ r2c2: [3] }),
      because: { ...no.because, houses: ["main/row/2"] },
    };
    const open: Deduction = { ...loose, because: { ...loose.because, facts: facts({ r2c1: [1, 4], r2c4: [3] }) } };
    // Nothing is needed of r2c1 to see that the 3 is used: one digit short of its whole domain is as wide as a fact goes.
    expect(widened(open, state, board, () => true, holds).because.facts.get(cell("r2c1"))).toBe(digitsOf([1, 2, 4]));
  });
  test("digits that sight accounts for are left alone", () => {
    const open: Deduction = {
      ...deduction({ houses: ["main/row/2"], facts: facts({ r2c1: [1, 4], r2c4: [3] }) }),
      places: new Map(),
      removes: facts({ r2c2: [3] }),
    };
    expect(widened(open, state, board, () => false, holds)).toEqual(open);
  });
});
