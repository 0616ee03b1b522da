import type { Board } from "../board/board.ts";
import { type Knowledge, withPlaced, withRelated, withRemoved } from "../board/knowledge.ts";
import { conclusionFrom, type Told } from "./claim.ts";
import type { Conclusion } from "./deduction.ts";

/** The state after a deduction: what it settles is settled and seen, what it removes is gone, its relations are known. */
export const after = (knowledge: Knowledge, board: Board, { places, removes, relates }: Conclusion): Knowledge => {
  const placed = places.size === 0 ? knowledge : withPlaced(knowledge, board, places);
  return withRelated(removes.size === 0 ? placed : withRemoved(placed, removes), relates);
};

/** The same for a step in its outside form, such as a running order has. */
export const afterStep = (knowledge: Knowledge, board: Board, step: Told): Knowledge =>
  after(knowledge, board, conclusionFrom(board, step));
