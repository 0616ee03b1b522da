import type { Technique } from "../deduction.ts";
import { sumUnits } from "../sum-units.ts";
import { deductionsOf } from "../unit.ts";

/** A house's total minus the sums in it: what the few cells left over must add up to. */
export const sumsLeft: Technique = {
  name: "sums-left",
  level: 3,
  settles: true,
  fits: ({ counts = [], houses, rules }) =>
    counts.every(
      ({ plus, minus }) => plus.every((id) => houses.includes(id)) && minus.every((id) => rules.includes(id)),
    ),
  *find(knowledge, board) {
    for (const unit of sumUnits(board)) yield* deductionsOf(unit, "sums-left", 3, knowledge, board);
  },
};
