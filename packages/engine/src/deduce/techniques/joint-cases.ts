import type { Technique } from "../deduction.ts";
import { jointUnits } from "../joint-units.ts";
import { deductionsOf, openness } from "../unit.ts";

/** Tries for one unit before it is left for a later state, when less is open. */
const mostTries = 600;
/** Units with more open than this (as a power of two) are not looked at yet. */
const tooOpen = 40;

/** A house and the clues that share cells with it, or two clues that share cells: all ways to meet them at once agree. */
export const jointCases: Technique = {
  name: "joint-cases",
  level: 3,
  settles: true,
  fits: ({ rules, houses }) => rules.length > 0 && rules.length + houses.length > 1,
  *find(knowledge, board) {
    const units = jointUnits(board)
      .map((unit) => ({ unit, open: openness(unit, knowledge) }))
      .filter(({ open }) => open > 0 && open <= tooOpen)
      .sort((a, b) => a.open - b.open);
    for (const { unit } of units) yield* deductionsOf(unit, "joint-cases", 3, knowledge, board, mostTries);
  },
};
