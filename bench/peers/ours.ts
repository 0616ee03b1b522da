import { type Board, finished, judging, type Soundness } from "@solvewright/engine";
import { timed } from "../turns.ts";
import type { Peer } from "./peer.ts";

const verdicts = { none: 0, one: 1, several: 2 } as const;

/** The engine's judgement of a compiled board; the board's layout and its terms' propagators stay from one to the next. */
const judged = (board: Board): Soundness => finished(judging(board));

export const ours: Peer = {
  name: "ours",
  ready: ({ board }) => ({ seen: () => verdicts[judged(board).verdict], pass: () => timed(() => judged(board)) }),
};
