import { why as askWhy, type Board, isSettled, judgeOf, listOf, startOf } from "@solvewright/engine";
import { randomFrom } from "@solvewright/engine/test-kit";
import { solve } from "../../packages/engine/src/search/solve.ts";
import type { Options } from "../options.ts";
import { countedProver } from "../proving.ts";
import { caseIn, filesByFamily } from "../puzzles.ts";
import { median, quantile } from "../turns.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const questionsEach = 6;
const seed = 17;

interface Asked {
  readonly ms: number;
  readonly answer: string;
}

/** Why an open cell can't be a digit: some questions about the start of a puzzle, the same at every run. */
const askAbout = (board: Board): Asked[] => {
  const random = randomFrom(seed);
  const start = startOf(board);
  const [solution] = solve(board, { limit: 1 }).solutions;
  const open = board.domains.flatMap((digits, cell) =>
    isSettled(start, cell)
      ? []
      : listOf(digits)
          .filter((digit) => digit !== solution![cell])
          .map((digit) => ({ cell, digit })),
  );
  return random
    .shuffled(open)
    .slice(0, questionsEach)
    .map((question) => {
      const began = performance.now();
      const { answer } = askWhy(start, board, question, judgeOf(board, countedProver(board).prove));
      return { ms: performance.now() - began, answer };
    });
};

async function* rows(options: Options): AsyncGenerator<Row> {
  for (const [name, files] of filesByFamily(options.cases)) {
    if (!isWanted(`why-${name}`, options) || /^(none|several)$/.test(name)) continue;
    const boards = files.map((file) => caseIn(file).board);
    for (const board of boards) askAbout(board);
    const asked = boards.flatMap(askAbout);
    const times = asked.map(({ ms }) => ms);
    const figures = {
      questions: asked.length,
      "median ms": median(times),
      "95 in 100 ms": quantile(times, 0.95),
      "most ms": Math.max(...times),
      unanswered: asked.filter(({ answer }) => answer === "unknown").length,
    };
    yield { measure: "why", of: name, figures };
  }
}

export const why: Measure = {
  name: "why",
  about: `Why can't it be that digit: ${questionsEach} seeded questions about the start of each puzzle, asked once to warm up, then timed.`,
  rows,
};
