import { aDigit, type Board, namedDigits, nounsFor, type WhyQuestion } from "@solvewright/engine";
import { cellTimes, clock, type Recorded } from "@solvewright/press";
import type { Asked, ExitCode, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped } from "../../long-work.ts";
import { onlySolution, stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { recordedIn } from "../../recorded-in.ts";
import { planOf } from "../../show.ts";
import { type Answered, answered, type From, fromIn, questionIn } from "../why/answered.ts";
import { drawTo } from "../why/picture.ts";

/** When in the show the cell is settled, in seconds of the video. */
interface Moment {
  readonly seconds: number;
  /** Where to watch it from there, where that is known. */
  readonly address?: string;
}

const momentIn = (
  board: Board,
  recorded: Recorded,
  cell: string,
  from: From,
  asked: Asked,
): Moment | ExitCode | undefined => {
  const solution = onlySolution(board, asked);
  if (typeof solution === "number") return solution;
  const plan = unlessStopped(() => planOf(board, asked, from.list));
  if (!plan) return stoppedAt(asked, "No answer yet.");
  const seconds = cellTimes({ board, plan, solution: namedDigits(board, solution), recorded })[cell];
  if (seconds === undefined) return undefined;
  const { address } = recorded;
  return { seconds, ...(address ? { address: address.replace("{seconds}", String(seconds)) } : {}) };
};

const askedSaid = (board: Board, { cell, digit }: WhyQuestion): string =>
  `Why can't ${nounsFor(board, "placed").cell(cell)} be ${aDigit(digit!)}?`;

const momentSaid = ({ seconds, address }: Moment): string =>
  `That cell is settled at ${clock(seconds)} in the show${address ? `: ${address}` : "."}`;

/** What is pasted under the viewer's question. */
const replyOf = (board: Board, question: WhyQuestion, { say }: Answered, moment: Moment | undefined): string =>
  [askedSaid(board, question), say, ...(moment ? [momentSaid(moment)] : [])].join("\n\n");

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const question = questionIn(board, words);
  if (question.digit === undefined)
    throw badUsage("Name the digit that is asked about.", { read: "no digit", right: "a digit" });
  const from = await fromIn(board, asked);
  const recorded = await recordedIn(asked, board);
  const name = board.canvas.names[question.cell]!;
  const moment = recorded?.take ? momentIn(board, recorded, name, from, asked) : undefined;
  if (typeof moment === "number") return moment;
  const made = answered(board, question, from, asked);
  if (!made) return stoppedAt(asked, "No answer yet.");
  const reply = replyOf(board, question, made, moment);
  if (flags.json) out.json({ answer: made.answer, reply, ...(moment ? { moment } : {}) });
  else for (const line of reply.split("\n")) out.line(printable(line));
  if (typeof flags.picture === "string") await drawTo(flags.picture, board, made.start.known, made.steps);
  return made.answer === "unknown" ? 1 : 0;
};
