import type { Board } from "../board/board.ts";
import { needsOf } from "./needs.ts";
import type { OrderedBeat } from "./running-order.ts";

/** By beat, the earlier beats (indices) whose digits or removals its facts need. */
export const standsOn = (board: Board, beats: readonly OrderedBeat[]): number[][] =>
  needsOf(
    beats.map(({ steps }) => steps.map(({ deduction }) => deduction)),
    board,
  ).map((needs) => [...needs].sort((a, b) => a - b));
