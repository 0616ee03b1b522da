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
  phrase,
  type Solution,
  type Step,
  type Why,
  type WhyQuestion,
  why,
} from "@solvewright/engine";
import type { Asked, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { Stopped, watching } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { soundnessOf, watchedProver } from "../../show.ts";
import { drawTo } from "./picture.ts";
import { type Start, startFor } from "./start.ts";

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

/** What is wrong on the asker's board comes before the answer. */
const wrongSaid = (board: Board, wrong: readonly string[]): string[] => {
  if (wrong.length === 0) return [];
  const nouns = nounsFor(board, "placed");
  const cells = listed(wrong.map((name) => nouns.cell(cellNamed(board.canvas, name)!)));
  return [`${capital(cells)} ${wrong.length === 1 ? "is" : "are"} wrong on this board, and left aside here.`];
};

const answered = (
  board: Board,
  { known }: Start,
  question: WhyQuestion,
  solution: Solution | undefined,
  asked: Asked,
) => {
  if (question.digit !== undefined && solution?.[question.cell] === question.digit)
    return { answer: "can", steps: [] } satisfies Why;
  const watch = watching(asked, () => asked.out.progress("Looking for the reason"));
  return why(known, board, question, judgeOf(board, watchedProver(board, watch)));
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const question = questionIn(board, words);
  try {
    const { verdict, solutions } = soundnessOf(board, asked);
    const solution = verdict === "one" ? solutions[0] : undefined;
    const start = await startFor(board, solution, asked);
    const found = answered(board, start, question, solution, asked);
    const say = [...wrongSaid(board, start.wrong), answerLine(board, start.known, question, found)].join(" ");
    const steps = stepsFrom(board, start.known, found.steps);
    if (flags.json) out.json({ answer: found.answer, wrong: start.wrong, steps, say });
    else out.line(printable(say));
    if (typeof flags.picture === "string") await drawTo(flags.picture, board, start.known, steps);
    return found.answer === "unknown" ? 1 : 0;
  } catch (error) {
    if (error instanceof Stopped) return stoppedAt(asked, "No answer yet.");
    throw error;
  }
};
