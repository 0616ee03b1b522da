import { expect, test } from "vitest";
import * as z from "zod";
import { planned } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { onlyPlace } from "../deduce/techniques/only-place.ts";
import { planSchema } from "./plan-schema.ts";

const outside = <T>(value: T): T => JSON.parse(JSON.stringify(value));
const judge = z.fromJSONSchema(JSON.parse(JSON.stringify(planSchema())));

// Without marks this one needs what-ifs.
const board = compile(
  puzzleOf(`puzzle: 1
title: Long Shadows
grids:
  - { id: main, size: 6 }
givens: { cells: { r4c6: 2, r6c4: 2, r4c2: 3, r1c2: 5, r5c2: 6, r2c6: 3 } }
rules:
  - cage: [{ cells: r1c1-r1c2, sum: 6 }, { cells: r5c4-r5c5, sum: 7 }, { cells: r3c2-r3c3, sum: 7 }]
  - cage: { cells: r1c4 r2c4, sum: 7 }
`),
);
const plan = outside(planned(board, { ladder: [onlyPlace] }).plan);
const [first, ...rest] = plan.steps;

test("takes a running order, what-ifs and their steps included", () => {
  expect(JSON.stringify(plan)).toContain('"contradiction":true');
  expect(judge.safeParse(plan).error).toBeUndefined();
});

test.each([
  ["a level of 6", { ...plan, level: 6 }],
  ["an unknown key", { ...plan, more: 1 }],
  ["a plan without its acts", { ...plan, acts: undefined }],
  ["a cell by its index", { ...plan, steps: [{ ...first, places: { 12: 3 } }, ...rest] }],
  ["reasons in one word", { ...plan, steps: [{ ...first, because: { ...first?.because, houses: "main/row/1" } }] }],
  ["a wrong step inside a what-if", { ...plan, steps: [{ ...first, steps: [{ n: 1 }] }, ...rest] }],
])("refuses %s", (_, wrong) => expect(judge.safeParse(outside(wrong)).success).toBe(false));
