import { type Board, isSettled, judgeOf, listOf, startOf, why } from "@solvewright/engine";
import { randomFrom } from "@solvewright/engine/test-kit";
import { solve } from "../packages/engine/src/search/solve.ts";
import { countedProver } from "./proving.ts";

/** Questions about each puzzle. */
export const questionsEach = 6;
const seed = 17;

export interface Question {
  readonly cell: number;
  readonly digit: number;
}

/** Why an open cell can't be a digit: some questions about the start of a puzzle, the same at every run. */
export const questionsAbout = (board: Board): Question[] => {
  const start = startOf(board);
  const [solution] = solve(board, { limit: 1 }).solutions;
  const open = board.domains.flatMap((digits, cell) =>
    isSettled(start, cell)
      ? []
      : listOf(digits)
          .filter((digit) => digit !== solution![cell])
          .map((digit) => ({ cell, digit })),
  );
  return randomFrom(seed).shuffled(open).slice(0, questionsEach);
};

export interface Asked {
  readonly ms: number;
  readonly answer: string;
}

export const asked = (board: Board, question: Question): Asked => {
  const began = performance.now();
  const { answer } = why(startOf(board), board, question, judgeOf(board, countedProver(board).prove));
  return { ms: performance.now() - began, answer };
};
