import type { Cell } from "../puzzle/canvas.ts";
import type { Sum } from "../terms/term.ts";
import type { Scope } from "./contract.ts";

/** The digits add up to this. */
export const addingTo = (cells: readonly Cell[], total: number): Scope => ({
  cells,
  start: 0,
  next: (sum, digit) => (sum as number) + digit,
  ok: (sum) => sum === total,
});

/** The cells of each that the other has not: what the two have in common weighs the same on both sides. */
export const apart = (first: readonly Cell[], second: readonly Cell[]): readonly [Cell[], Cell[]] => [
  first.filter((cell) => !second.includes(cell)),
  second.filter((cell) => !first.includes(cell)),
];

/** The digits of the first add up to as much as those of the second. */
export const asMuchAs = (first: readonly Cell[], second: readonly Cell[]): Scope => {
  const [left, right] = apart(first, second);
  return {
    cells: [...left, ...right],
    start: 0,
    next: (lead, digit, index) => (lead as number) + (index < left.length ? digit : -digit),
    ok: (lead) => lead === 0,
  };
};

export const asMuchAsTerm = (owner: string, first: readonly Cell[], second: readonly Cell[]): Sum => {
  const [left, right] = apart(first, second);
  return {
    term: "sum",
    owner,
    cells: [...left, ...right],
    weights: [...left.map(() => 1), ...right.map(() => -1)],
    equals: 0,
  };
};
