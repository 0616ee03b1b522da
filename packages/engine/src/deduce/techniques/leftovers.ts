import type { Board } from "../../board/board.ts";
import type { Knowledge } from "../../board/knowledge.ts";
import type { Deduction, Technique } from "../deduction.ts";
import { leftoverUnits } from "../leftover-units.ts";
import { deductionsOf } from "../unit.ts";

/** So many cells left over on both sides together are seen at a glance. */
const few = 4;

function* found(name: string, level: number, isFew: boolean, knowledge: Knowledge, board: Board): Iterable<Deduction> {
  for (const unit of leftoverUnits(board))
    if (unit.inside.length + unit.outside.length <= few === isFew)
      yield* deductionsOf(unit, name, level, knowledge, board);
}

const ofSize = (name: string, level: number, isFew: boolean): Technique => ({
  name,
  level,
  settles: true,
  fits: ({ counts = [], houses }) =>
    counts.every(({ plus, minus }) => [...plus, ...minus].every((id) => houses.includes(id))),
  find: (knowledge, board) => found(name, level, isFew, knowledge, board),
});

/** Houses that share nearly all their cells: what the ones have besides holds the digits that the others have besides. */
export const leftovers = ofSize("leftovers", 3, true);
/** The same with more cells on both sides. */
export const equalSets = ofSize("equal-sets", 4, false);
