import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { startOf } from "../board/knowledge.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { answerLine } from "../speech/english/answer.ts";
import { judgeOf } from "./judge.ts";
import { why } from "./why.ts";

const mill = compile(
  puzzleOf(readFileSync(new URL("../../../../examples/paper-mill.puzzle.yaml", import.meta.url), "utf8")),
);

// These lost on their way into the chain what they count, and could not be said.
test.each([
  ["r2c9", 5],
  ["r4c2", 8],
  ["r6c11", 6],
])("the reason why %s can't be %i is said, though it rests on sums counted off", (name, digit) => {
  const about = definitionOf(mill);
  const question = { cell: cellNamed(mill.canvas, name)!, digit };
  const judge = judgeOf(mill, (claim) => prove(claim, about));
  const found = why(startOf(mill), mill, question, judge);
  expect(found.answer).toBe("cannot");
  expect(found.steps.some(({ technique }) => technique === "sums-left")).toBe(true);
  expect(answerLine(mill, startOf(mill), question, found)).toMatch(/\.$/);
});
