import { wrongIn } from "@solvewright/engine";
import type { Position } from "../solve/position.ts";
import type { Reply } from "./asks.ts";
import type { Helped } from "./helped.ts";

/** Which settled cells are not right, how many are settled, and how many still open. */
export const checked = (helped: Helped, position: Position): Reply => {
  const settled = Object.keys(position.settled).length;
  const cells = helped.board.canvas.names.length - helped.board.givens.size;
  return { reply: "check", wrong: wrongIn(helped.board, helped.solution, position), settled, open: cells - settled };
};
