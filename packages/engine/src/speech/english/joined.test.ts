import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { compile } from "../../board/compile.ts";
import { digitsOf } from "../../board/digits.ts";
import { type Knowledge, startOf } from "../../board/knowledge.ts";
import { after } from "../../deduce/after.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import { lastCell } from "../../deduce/techniques/last-cell.ts";
import { onlyPlace } from "../../deduce/techniques/only-place.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { type Style, textOf } from "../line.ts";
import { joinedOf } from "./joined.ts";
import { recallOf } from "./recall.ts";

const boardOf = (givens: string, rules = "") =>
  compile(
    puzzleOf(
      `puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, size: 4 }\ngivens: { cells: { ${givens} } }\n${rules}`,
    ),
  );
type OnBoard = ReturnType<typeof boardOf>;

/** The step that puts the digit there, by one of these two ways and in this house. */
const stepTo = (board: OnBoard, knowledge: Knowledge, name: string, house: string): Deduction => {
  const cell = cellNamed(board.canvas, name)!;
  const found = [...lastCell.find(knowledge, board), ...onlyPlace.find(knowledge, board)];
  return found.find(({ places, because }) => places.has(cell) && because.houses[0] === house)!;
};

const said = (
  board: OnBoard,
  path: readonly (readonly [string, string])[],
  style: Style,
  isEnd = false,
  isFirst = true,
) => {
  let before = startOf(board);
  const steps = path.map(([name, house]) => {
    const step = { deduction: stepTo(board, before, name, house), before };
    before = after(before, board, step.deduction);
    return step;
  });
  const joined = joinedOf(steps, board, style, { isEnd, isFirst });
  return joined && { count: joined.count, text: textOf(joined.parts) };
};

describe("digits that finish a house", () => {
  const board = boardOf("r1c3: 3, r1c4: 4, r3c1: 1");
  const path = [
    ["r1c2", "main/row/1"],
    ["r1c1", "main/row/1"],
  ] as const;
  test("are one sentence with its reason", () =>
    expect(said(board, path, "pointing")).toEqual({ count: 2, text: "1 and 2 finish this row: this column has a 1." }));
  test("say where each goes where nothing is pointed at", () =>
    expect(said(board, path, "placed")!.text).toBe(
      "1 and 2 finish row 1: column 1 has a 1, so row 1, column 2 is a 1 and row 1, column 1 is a 2.",
    ));
});

describe("last cells one after the other", () => {
  // 1 2 3 4 / 3 4 1 2 / 2 1 4 3 / 4 3 2 1
  const all = "1234341221434321";
  const without = (open: readonly string[]): OnBoard =>
    boardOf(
      [...all]
        .map((digit, k) => [`r${Math.floor(k / 4) + 1}c${(k % 4) + 1}`, digit] as const)
        .filter(([name]) => !open.includes(name))
        .map(([name, digit]) => `${name}: ${digit}`)
        .join(", "),
    );
  const three = [
    ["r1c1", "main/row/1"],
    ["r2c4", "main/row/2"],
    ["r4c2", "main/column/2"],
  ] as const;
  const four = [...three, ["r3c3", "main/row/3"]] as const;
  const names = (path: readonly (readonly [string, string])[]) => path.map(([name]) => name);
  test("up to three are named with their houses", () =>
    expect(said(without(names(three)), three, "pointing")).toEqual({
      count: 3,
      text: "This row just needs a 1, this one a 2 and this column a 3.",
    }));
  test("more are pointed at", () => {
    const board = without(names(four));
    expect(said(board, four, "pointing")!.text).toBe(
      "Each of these is the last one in its row, column or box: 1, 2, 3 and 4.",
    );
    expect(said(board, four, "pointing", false, false)!.text).toBe(
      "Then each of these has one place left: 1, 2, 3 and 4.",
    );
  });
  test("at the end of a show they are the rest", () =>
    expect(said(without(names(four)), four, "pointing", true)!.text).toBe(
      "The rest falls out, one to each row, column or box: 1, 2, 3 and 4.",
    ));
  test("one by itself is not joined to anything", () =>
    expect(said(without(["r1c1"]), [["r1c1", "main/row/1"]], "pointing")).toBeUndefined());
});

describe("a reason said again", () => {
  const board = boardOf("r3c3: 3", "rules:\n  - cage: { cells: r1c1 r1c2, sum: 3 }\n");
  const cells = ["r1c1", "r1c2"].map((name) => cellNamed(board.canvas, name)!);
  const removal = (digits: readonly number[]): Deduction => ({
    technique: "clue-cases",
    level: 2,
    places: new Map(),
    removes: new Map(cells.map((cell) => [cell, digitsOf(digits)])),
    spots: [],
    relates: [],
    because: { facts: new Map(), spots: [], relations: [], houses: [], rules: ["cage/1"] },
  });
  const text = (digits: readonly number[], style: Style): string =>
    textOf(recallOf(removal(digits), startOf(board), board, style));
  test("is a clause: what is left where that is short, else what is kept out", () => {
    expect(text([3, 4], "pointing")).toBe("Remember, this cage left only 1 and 2 in these two cells.");
    expect(text([4], "placed")).toBe(
      "Remember, the cage of 3 at row 1, columns 1 and 2 left only 1, 2 and 3 in row 1, columns 1 and 2.",
    );
  });
});
