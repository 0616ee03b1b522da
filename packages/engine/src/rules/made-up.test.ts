import { expect, test } from "vitest";
import { audit } from "../../test-kit/audit.ts";
import { planned } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { pairTerm } from "../terms/make.ts";
import { type PairBody, pairs } from "./bodies/pairs.ts";
import { cellsAt } from "./cells.ts";
import type { Bound, Kind } from "./contract.ts";
import { kinds } from "./registry.ts";

const isOdd = (x: number, y: number): boolean => (x + y) % 2 === 1;

/** A kind that nobody else has heard of: one object ... */
const oddTogether: Kind<PairBody, Bound> = {
  name: "odd-together",
  body: pairs,
  resolve: ({ cells }, setting) => ({ cells: cellsAt(setting, cells) }),
  scopes: ({ cells }) => [{ cells, holds: ([x, y]) => isOdd(x!, y!) }],
  terms: ({ id, cells }) => [pairTerm(id, cells, isOdd)],
  marks: () => [],
  words: ({ cells }) => ({
    rule: "Digits joined by a hook add up to an odd number.",
    title: "Hooks",
    noun: "hook",
    plural: "hooks",
    at: cells,
    holds: "add up to an odd number",
  }),
  relabels: "none",
};

const text = `puzzle: 1
title: Hooks
setter: { name: us, permission: own }
grids:
  - { id: main, size: 4 }
givens: { cells: { r1c2: 2, r2c1: 3, r3c2: 1, r3c3: 4 } }
rules:
  - odd-together: [r2c1 r2c2, r1c1 r1c2, r1c3 r1c4, r2c2 r2c3]
`;

test("one file and one line are all that a new kind takes: read, reasoned about, proved and told", () => {
  const all = [...kinds, oddTogether]; // ... and its line
  const board = compile(puzzleOf(text, all), all);
  const { plan } = planned(board);
  expect(plan).toMatchObject({ solved: true, unshown: 0 });
  expect(plan.rules.lines.map(({ say }) => say)).toContain("Digits joined by a hook add up to an odd number.");
  expect(plan.steps.some(({ because }) => because.rules.some((id) => id.startsWith("odd-together/")))).toBe(true);
  expect(plan.acts.flatMap(({ beats }) => beats.map(({ say }) => say)).join(" ")).toContain("this hook");
  expect(audit(plan, board)).toEqual({ faults: [], unshown: [] });
});

test("that puzzle needs its hooks: without them plain reasoning ends early", () =>
  expect(planned(compile(puzzleOf(text.replace(/rules:[\s\S]*/, "")))).plan.solved).toBe(false));
