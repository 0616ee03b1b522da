import {
  after,
  answerLine,
  type Board,
  type Cell,
  capital,
  cellNamed,
  claimOf,
  type Deduction,
  judgeOf,
  type Knowledge,
  listed,
  nounsFor,
  type Position,
  phrase,
  type Step,
  textOf,
  type Why,
  type WhyQuestion,
  why,
} from "@solvewright/engine";
import { positionIn } from "../../board-file.ts";
import type { Asked, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped, watching } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { soundnessOf, watchedProver } from "../../show.ts";
import { drawTo } from "./picture.ts";
import { startFor } from "./start.ts";

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
      say: textOf(say),
      seconds: 0,
    };
  });
};

/** What is wrong on the asker's board comes before the answer. */
const wrongSaid = (board: Board, wrong: readonly string[]): string[] => {
  if (wrong.length === 0) return [];
  const nouns = nounsFor(board, "placed");
  const cells = listed(wrong.map((name) => nouns.cell(cellNamed(board.canvas, name)!)));
  return [`${capital(cells)} ${wrong.length === 1 ? "is" : "are"} wrong on this board, and left aside here.`];
};

const answered = (board: Board, question: WhyQuestion, position: Position | undefined, asked: Asked) => {
  const { verdict, solutions } = soundnessOf(board, asked);
  const solution = verdict === "one" ? solutions[0] : undefined;
  const start = startFor(board, solution, position, asked);
  if (question.digit !== undefined && solution?.[question.cell] === question.digit)
    return { start, found: { answer: "can", steps: [] } satisfies Why };
  const watch = watching(asked, () => asked.out.progress("Looking for the reason"));
  return { start, found: why(start.known, board, question, judgeOf(board, watchedProver(board, watch))) };
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const question = questionIn(board, words);
  const position = typeof flags.board === "string" ? await positionIn(flags.board, board) : undefined;
  const made = unlessStopped(() => answered(board, question, position, asked));
  if (!made) return stoppedAt(asked, "No answer yet.");
  const { known, wrong } = made.start;
  const { answer } = made.found;
  const say = [...wrongSaid(board, wrong), answerLine(board, known, question, made.found)].join(" ");
  const steps = stepsFrom(board, known, made.found.steps);
  if (flags.json) out.json({ answer, wrong, steps, say });
  else out.line(printable(say));
  if (typeof flags.picture === "string") await drawTo(flags.picture, board, known, steps);
  return answer === "unknown" ? 1 : 0;
};
