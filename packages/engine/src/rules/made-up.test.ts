import { expect, test } from "vitest";
import { audit } from "../../test-kit/audit.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { runningOrder } from "../order/run.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
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
givens:
  main: |
    1...
    ..3.
    .1..
    ...4
rules:
  - odd-together: [r1c1 r1c2, r2c1 r2c2]
`;

test("one file and one line are all that a new kind takes: read, reasoned about, proved and told", () => {
  const all = [...kinds, oddTogether]; // ... and its line
  const board = compile(puzzleOf(text, all), all);
  const about = definitionOf(board);
  const running = runningOrder(board, (claim) => prove(claim, about));
  let next = running.next();
  while (!next.done) next = running.next();
  const { plan } = next.value;
  expect(plan).toMatchObject({ solved: true, unshown: 0 });
  expect(plan.rules.lines.map(({ say }) => say)).toContain("Digits joined by a hook add up to an odd number.");
  expect(audit(plan, board)).toEqual({ faults: [], unshown: [] });
});
