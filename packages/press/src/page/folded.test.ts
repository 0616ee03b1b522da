import { expect, test } from "vitest";
import { folded, unfolded } from "./folded.ts";

const stroke = { ink: "ink", width: 0.026 };
const shape = { shape: "line", stroke };

test.each([
  [null],
  ["$"],
  [[]],
  [{}],
  [[[], {}, [[]]]],
  [[shape, { ...shape, points: [[1, 2]] }, { deep: [shape, stroke] }]],
])("%j comes out as it was put in", (data) => {
  expect(unfolded(JSON.parse(JSON.stringify(folded(data))))).toEqual(data);
});

test("what occurs again is written once, and so is what occurs in it", () => {
  expect(folded([shape, shape, stroke])).toEqual({
    table: [stroke, { shape: "line", stroke: { $: 0 } }],
    data: [{ $: 1 }, { $: 1 }, { $: 0 }],
  });
});

test("short values are left where they are", () => {
  expect(
    folded([
      [1, 2],
      [1, 2],
    ]).table,
  ).toEqual([]);
});
