import { expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { randomFrom } from "../random.ts";
import { modelOf } from "./model.ts";
import { type Narrowing, narrowingOf } from "./narrowing.ts";

const boardOf = (rest: string) =>
  compile(puzzleOf(`puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, ${rest}\n`));

const openIn = ({ now, open, openCount }: Narrowing) => ({
  listed: [...open.subarray(0, openCount())].sort((a, b) => a - b),
  unsettled: [...now.keys()].filter((cell) => (now[cell]! & (now[cell]! - 1)) !== 0),
});

test.each(["size: 6 }", "size: 9 }\nrules: [anti-knight, { cage: { cells: r1c1 r1c2 r2c2, sum: 12 } }]"])(
  "what was kept can be taken back, and then follows again from anew: %s",
  (rest) => {
    const board = boardOf(rest);
    const used = narrowingOf(modelOf(board));
    const random = randomFrom(1);
    expect(used.settle()).toBe(true);
    const start = [...used.now];
    for (let round = 0; round < 50; round++) {
      const mark = used.mark();
      const fresh = narrowingOf(modelOf(board));
      fresh.settle();
      for (let k = 0, holds = true; k < 20 && holds; k++) {
        const cell = random.pick([...start.keys()]);
        const digit = used.now[cell]! & -used.now[cell]!;
        holds = used.keep(cell, digit) && used.settle();
        expect(fresh.keep(cell, digit) && fresh.settle()).toBe(holds);
        if (!holds) break;
        expect(used.now).toEqual(fresh.now);
        const { listed, unsettled } = openIn(used);
        expect(listed).toEqual(unsettled);
      }
      used.undo(mark);
      expect([...used.now]).toEqual(start);
    }
  },
);

test("a digit that a house has no place for is seen at once, and nothing of it waits for later", () => {
  const narrowing = narrowingOf(modelOf(boardOf("size: 4 }")));
  narrowing.settle();
  const mark = narrowing.mark();
  expect([0, 1, 2].every((cell) => narrowing.keep(cell, ~2))).toBe(true);
  expect(narrowing.keep(3, ~2)).toBe(false);
  narrowing.undo(mark);
  expect(narrowing.settle()).toBe(true);
  expect([...narrowing.now]).toEqual(new Array(16).fill(30));
});

test("boards that differ in their givens alone share a layout", () => {
  const board = boardOf("size: 4 }");
  const other = { ...board, givens: new Map([[0, 1]]) };
  expect(modelOf(other).layout).toBe(modelOf(board).layout);
  expect(modelOf(other).domains).not.toEqual(modelOf(board).domains);
  expect(modelOf(boardOf("size: 4, regions: none }")).layout).not.toBe(modelOf(board).layout);
});
