import type { Board } from "../board/board.ts";
import { type Knowledge, withPlaced, withRemoved } from "../board/knowledge.ts";
import type { Deduction } from "./deduction.ts";

/** The state after a deduction: what it settles is settled and seen, what it removes is gone. */
export const after = (knowledge: Knowledge, board: Board, { places, removes }: Deduction): Knowledge =>
  withRemoved(withPlaced(knowledge, board, places), removes);
