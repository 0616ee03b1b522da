import { expect, test } from "vitest";
import { mill } from "../../test-kit/grounds.ts";
import { apply, changeBetween, emptying, invert } from "./change.ts";
import { cleared, marked, settled, spotted } from "./entry.ts";
import { type History, withChange, withRedo, withUndo } from "./history.ts";
import { nothing, type Position } from "./position.ts";

/** A seeded generator (mulberry32), so that a failing run can be run again. */
const chance = (seed: number) => (below: number) => {
  seed = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) % below;
};

const cells = [...mill.cells.keys()];
const acted = (position: Position, pick: (below: number) => number): Position => {
  const chosen = Array.from({ length: 1 + pick(3) }, () => cells[pick(cells.length)]!);
  const digit = 1 + pick(8);
  const shape = (["row", "column", "region"] as const)[pick(3)]!;
  const acts = [
    () => marked(mill, position, chosen, digit),
    () => settled(mill, position, chosen, pick(2) === 0),
    () => spotted(mill, position, chosen, digit, shape, pick(2)),
    () => cleared(mill, position, chosen),
  ];
  return acts[pick(acts.length)]!();
};

test.each(Array.from({ length: 20 }, (_, seed) => [seed]))(
  "run %i: every change can be undone and done again",
  (seed) => {
    const pick = chance(seed);
    let history: History = { position: nothing, done: [], undone: [] };
    const seen: Position[] = [nothing];
    for (let k = 0; k < 60; k++) {
      const change = changeBetween(history.position, acted(history.position, pick));
      expect(apply(invert(change), apply(change, history.position))).toEqual(history.position);
      expect(JSON.parse(JSON.stringify(change))).toEqual(change);
      history = withChange(history, change);
      seen.push(history.position);
    }
    for (const position of seen.slice(0, -1).reverse()) {
      history = withUndo(history);
      expect(history.position).toEqual(position);
    }
    for (const position of seen.slice(1)) {
      history = withRedo(history);
      expect(history.position).toEqual(position);
    }
  },
);

test("undo and redo at their ends change nothing, and a new change forgets what was undone", () => {
  const start: History = { position: nothing, done: [], undone: [] };
  expect(withUndo(start)).toBe(start);
  const one = withChange(start, changeBetween(nothing, { ...nothing, marks: { r1c6: [1] } }));
  expect(withRedo(one)).toBe(one);
  const other = withChange(withUndo(one), changeBetween(nothing, { ...nothing, marks: { r1c6: [2] } }));
  expect(other.undone).toEqual([]);
});

test("everything can be taken out at once", () => {
  const position: Position = {
    settled: { r1c6: 2 },
    marks: { r1c7: [1, 2] },
    spots: [{ digit: 3, house: "yard/row/1", cells: ["r1c8"] }],
  };
  expect(apply(emptying(position), position)).toEqual(nothing);
});
