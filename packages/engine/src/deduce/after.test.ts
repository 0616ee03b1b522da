import { expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import { only } from "../board/digits.ts";
import { isRelated, startOf } from "../board/knowledge.ts";
import type { Related } from "../board/related.ts";
import { after, afterStep } from "./after.ts";
import { claimOf } from "./claim.ts";
import { gathering, placing, relating, removing } from "./reasons.ts";
import { byRelation, relations } from "./techniques/relations.ts";

const cages = "cage: [{ cells: r1c3 r1c4, sum: 5 }, { cells: r1c5 r1c6, sum: 7 }, { cells: r1c1 r1c2 r2c1, sum: 12 }]";
const board = compile(puzzleOf(tiny([cages], { size: 6 })));
const start = startOf(board);
const { reasons } = gathering();

const sorts: readonly Related[] = [
  { relation: "same", cells: [3, 1] },
  { relation: "less", cells: [3, 1] },
  { relation: "sum", cells: [0, 1, 2], is: 9 },
  { relation: "parity", cells: [0, 7], is: "different" },
];

test.each([
  placing("only-digit", 1, 4, 2, reasons),
  removing("clue-cases", 2, new Map([[5, only(6)]]), reasons),
  ...sorts.map((related) => relating("relation", 3, related, reasons)),
])("a step from outside leaves the same behind as the deduction that it tells: %j", (deduction) =>
  expect(afterStep(start, board, claimOf(board, deduction))).toEqual(after(start, board, deduction)),
);

test("what a step from outside has tied together can be reasoned on with", () => {
  const tie = [...relations.find(start, board)].find(({ relates }) => relates[0]?.relation === "sum")!;
  const state = afterStep(start, board, claimOf(board, tie));
  expect(isRelated(state, tie.relates[0]!)).toBe(true);
  expect([...byRelation.find(start, board)]).toEqual([]);
  expect([...byRelation.find(state, board)].map(({ because }) => because.relations)).toContainEqual(tie.relates);
});
