import {
  after,
  answerLine,
  type Board,
  cellNamed,
  claimOf,
  type Deduction,
  definitionOf,
  judgeOf,
  type Knowledge,
  phrase,
  prove,
  type Step,
  startOf,
  why,
} from "@solvewright/engine";
import { type Command, type ExitCode, UsageError } from "../command.ts";
import { loadPuzzle } from "../puzzle-file.ts";

const cellOf = (board: Board, name: string): number => {
  const cell = cellNamed(board.canvas, name);
  if (cell === undefined)
    throw new UsageError(
      `${name} is no cell of this puzzle; cells are named like ${board.canvas.names[0]}, row and column of the whole canvas.`,
    );
  return cell;
};

const digitOf = (word: string | undefined): number | undefined => {
  if (word === undefined) return undefined;
  if (!/^\d{1,2}$/.test(word)) throw new UsageError(`${word} is no digit.`);
  return Number(word);
};

const stepsOf = (board: Board, steps: readonly Deduction[], start: Knowledge): Step[] => {
  let state = start;
  return steps.map((step, k) => {
    const say = phrase(step, state, board, "placed")
      .map(({ text }) => text)
      .join("");
    state = after(state, board, step);
    return { n: k + 1, technique: step.technique, level: step.level, ...claimOf(board, step), say, seconds: 0 };
  });
};

export const run: Command["run"] = async ({ words, flags, out }): Promise<ExitCode> => {
  const { board } = await loadPuzzle(words[0]!);
  const cell = cellOf(board, words[1]!);
  const digit = digitOf(words[2]);
  const about = definitionOf(board);
  const start = startOf(board);
  const question = { cell, ...(digit === undefined ? {} : { digit }) };
  const found = why(
    start,
    board,
    question,
    judgeOf(board, (claim) => prove(claim, about)),
  );
  const say = answerLine(board, start, question, found);
  if (flags.json) out.json({ answer: found.answer, steps: stepsOf(board, found.steps, start), say });
  else out.line(say);
  return found.answer === "unknown" ? 1 : 0;
};
