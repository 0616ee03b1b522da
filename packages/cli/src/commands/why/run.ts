import {
  after,
  answerLine,
  type Board,
  type Cell,
  cellNamed,
  claimOf,
  type Deduction,
  judgeOf,
  type Knowledge,
  phrase,
  type Step,
  startOf,
  type WhyQuestion,
  why,
} from "@solvewright/engine";
import type { Asked, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped, watching } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { watchedProver } from "../../show.ts";

const cellIn = ({ canvas }: Board, name: string): Cell => {
  const cell = cellNamed(canvas, name);
  if (cell !== undefined) return cell;
  const right = `a cell of this puzzle, such as ${canvas.names[0]}`;
  throw badUsage(
    `${printable(name)} is no cell of this puzzle. Cells are named by row and column, such as ${canvas.names[0]}.`,
    {
      read: name,
      right,
    },
  );
};

const digitIn = (word: string): number => {
  if (/^\d{1,2}$/.test(word)) return Number(word);
  throw badUsage(`${printable(word)} is no digit.`, { read: word, right: "a digit" });
};

const questionIn = (board: Board, [, cell, digit]: Asked["words"]): WhyQuestion => ({
  cell: cellIn(board, cell!),
  ...(digit === undefined ? {} : { digit: digitIn(digit) }),
});

/** The steps of an answer as the outside sees them, each said in the state that those before it leave. */
const stepsFrom = (board: Board, start: Knowledge, deductions: readonly Deduction[]): Step[] => {
  let state = start;
  return deductions.map((deduction, k) => {
    const say = phrase(deduction, state, board, "placed");
    state = after(state, board, deduction);
    const { technique, level } = deduction;
    return {
      n: k + 1,
      technique,
      level,
      ...claimOf(board, deduction),
      say: say.map(({ text }) => text).join(""),
      seconds: 0,
    };
  });
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const question = questionIn(board, words);
  const start = startOf(board);
  const watch = watching(asked, () => out.progress("Looking for the reason"));
  const found = unlessStopped(() => why(start, board, question, judgeOf(board, watchedProver(board, watch))));
  if (!found) return stoppedAt(asked, "No answer yet.");
  const say = answerLine(board, start, question, found);
  if (flags.json) out.json({ answer: found.answer, steps: stepsFrom(board, start, found.steps), say });
  else out.line(printable(say));
  return found.answer === "unknown" ? 1 : 0;
};
