import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { compile } from "../packages/engine/src/board/compile.ts";
import { has, isWithin, listOf } from "../packages/engine/src/board/digits.ts";
import { startOf } from "../packages/engine/src/board/knowledge.ts";
import { after } from "../packages/engine/src/deduce/after.ts";
import { claimOf } from "../packages/engine/src/deduce/claim.ts";
import { judgeOf } from "../packages/engine/src/deduce/judge.ts";
import { why } from "../packages/engine/src/deduce/why.ts";
import { definitionOf } from "../packages/engine/src/prove/definition.ts";
import { prove } from "../packages/engine/src/prove/prove.ts";
import { answerLine } from "../packages/engine/src/speech/english/answer.ts";
import { puzzleOf } from "../packages/engine/test-kit/puzzles.ts";
import { randomFrom } from "../packages/engine/test-kit/random.ts";

/** `WHY=200 SEED=3 npx vitest run checks/why.test.ts` asks more, and others. */
const many = Number(process.env.WHY ?? 12);
const seed = Number(process.env.SEED ?? 1);

/** Arrows and little killers without a given: of 24 questions two found no answer, and others took minutes. */
const beyond = /\/sums-0/;

const files = ["./published/", "../../shared/cases/"]
  .map((folder) => fileURLToPath(new URL(folder, import.meta.url)))
  .filter(existsSync)
  .flatMap((folder) => readdirSync(folder).map((name) => `${folder}${name}`))
  .filter((file) => file.endsWith(".puzzle.yaml") && !beyond.test(file))
  .map((file) => ({ file, answer: JSON.parse(readFileSync(file.replace(".puzzle.yaml", ".answer.json"), "utf8")) }))
  .filter(({ answer }) => answer.verdict === "one");

const random = randomFrom(seed);
const questions = Array.from({ length: many }, (_, k) => {
  const { file, answer } = random.pick(files);
  const cell = random.pick(Object.keys(answer.solution as object).sort());
  const digits = [...new Set(Object.values(answer.solution as Record<string, number>))].sort((a, b) => a - b);
  const digit = random.pick(digits);
  return { k, name: file.split("/").at(-1)!, file, cell, digit, right: answer.solution[cell] as number };
});

// The solutions are the cases' own (two general-purpose solvers); whether a right digit may be is told by no chain.
test.each(questions)("$k: $name, $cell, $digit", ({ file, cell: name, digit, right }) => {
  const board = compile(puzzleOf(readFileSync(file, "utf8")));
  const about = definitionOf(board);
  const question = { cell: board.canvas.names.indexOf(name), ...(digit === right ? {} : { digit }) };
  const found = why(
    startOf(board),
    board,
    question,
    judgeOf(board, (claim) => prove(claim, about)),
  );
  expect(found.answer).toBe(digit === right ? "is" : "cannot");
  let known = startOf(board);
  for (const step of found.steps) {
    expect(prove(claimOf(board, step), about)).toEqual({ verdict: "proved" });
    for (const [cell, digits] of step.because.facts)
      expect(isWithin(known.possible[cell]!, digits), `${board.canvas.names[cell]} is earned`).toBe(true);
    known = after(known, board, step);
  }
  const left = known.possible[question.cell]!;
  if (digit === right) expect(listOf(left)).toEqual([right]);
  else expect(has(left, digit)).toBe(false);
  expect(answerLine(board, startOf(board), question, found)).toMatch(/[.]$/);
});
