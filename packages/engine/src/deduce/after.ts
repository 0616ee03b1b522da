import type { Board } from "../board/board.ts";
import { digitsOf } from "../board/digits.ts";
import { type Knowledge, withPlaced, withRelated, withRemoved } from "../board/knowledge.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { relatedFrom } from "./claim.ts";
import type { Deduction } from "./deduction.ts";
import type { Claim } from "./step.ts";

/** The state after a deduction: what it settles is settled and seen, what it removes is gone, its relations are known. */
export const after = (knowledge: Knowledge, board: Board, { places, removes, relates }: Deduction): Knowledge => {
  const placed = places.size === 0 ? knowledge : withPlaced(knowledge, board, places);
  return withRelated(removes.size === 0 ? placed : withRemoved(placed, removes), relates);
};

const byCell = <T>({ canvas }: Board, table: Readonly<Record<string, T>>) =>
  Object.entries(table).map(([name, value]) => [cellNamed(canvas, name)!, value] as const);

/** The same for a step in its outside form. */
export const afterStep = (
  knowledge: Knowledge,
  board: Board,
  { places, removes, relates }: Pick<Claim, "places" | "removes" | "relates">,
): Knowledge =>
  withRelated(
    withRemoved(
      withPlaced(knowledge, board, byCell(board, places)),
      byCell(board, removes).map(([cell, digits]) => [cell, digitsOf(digits)]),
    ),
    relates.map((relation) => relatedFrom(board, relation)),
  );
