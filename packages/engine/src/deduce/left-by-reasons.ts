import type { Board } from "../board/board.ts";
import { both, type Digits, isOne, without } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Reasons } from "./deduction.ts";

/** The sets of cells that the listed houses and rules keep from repeating a digit. */
export const apartIn = ({ houses, rules }: Pick<Reasons, "houses" | "rules">, board: Board): (readonly Cell[])[] => [
  ...houses.map((id) => board.house(id)!.cells),
  ...board.groups.filter(({ rule }) => rules.includes(rule)).map(({ cells }) => cells),
];

/**
 * By cell, the digits that reasons leave by themselves: the facts, and what those that are one digit bar through the
 * listed houses and rules. A pattern that is still to be seen in here can be said of these reasons, whatever the state.
 */
export const leftByReasons = (because: Reasons, board: Board): readonly Digits[] => {
  const left = [...board.domains];
  for (const [cell, digits] of because.facts) left[cell] = both(left[cell]!, digits);
  const apart = apartIn(because, board);
  for (const [from, digit] of because.facts)
    if (isOne(digit))
      for (const cells of apart)
        if (cells.includes(from)) for (const cell of cells) if (cell !== from) left[cell] = without(left[cell]!, digit);
  return left;
};
