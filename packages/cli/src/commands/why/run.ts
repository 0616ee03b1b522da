import type { Board } from "@solvewright/engine";
import type { Asked, ExitCode, Run } from "../../command.ts";
import { unlessStopped } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { answered, boardSaid, type From, fromIn, onBoard, questionIn } from "./answered.ts";
import { judgedFrom, saidIn, tellJudged } from "./claim.ts";
import { drawTo } from "./picture.ts";

const claimed = (board: Board, flag: string, from: From, asked: Asked): Promise<ExitCode> => {
  const said = saidIn(flag, board);
  const made = unlessStopped(() => {
    const { start } = onBoard(board, from, asked);
    return { start, judged: judgedFrom(board, said, start, asked) };
  });
  if (!made) return Promise.resolve(stoppedAt(asked, "No verdict yet."));
  return tellJudged(board, said, made.start, made.judged, asked, boardSaid(board, made.start));
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const from = await fromIn(board, asked);
  if (typeof flags.claim === "string") return claimed(board, flags.claim, from, asked);
  const made = answered(board, questionIn(board, words), from, asked);
  if (!made) return stoppedAt(asked, "No answer yet.");
  const { answer, start, steps, say } = made;
  const { known, wrong, wrongMarks, wrongSpots } = start;
  if (flags.json) out.json({ answer, wrong, wrongMarks, wrongSpots, steps, say });
  else out.line(printable(say));
  if (typeof flags.picture === "string") await drawTo(flags.picture, board, known, steps);
  return answer === "unknown" ? 1 : 0;
};
