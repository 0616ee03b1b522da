import { type Digits, listOf, none } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Classes, Pair } from "./term.ts";

const every = 0xffffffff as Digits;

/** The pairs of digits 0 to 31 that `holds` allows, as a table. */
export const pairTerm = (
  owner: string,
  cells: readonly Cell[],
  holds: (first: number, second: number) => boolean,
): Pair => ({
  term: "pair",
  owner,
  cells,
  allowed: listOf(every).map((first) =>
    listOf(every).reduce<Digits>(
      (set, second) => (holds(first, second) ? ((set | (1 << second)) as Digits) : set),
      none,
    ),
  ),
});

/** The same table for many pairs of cells. */
export const pairTerms = (
  owner: string,
  pairs: readonly (readonly [Cell, Cell])[],
  holds: (first: number, second: number) => boolean,
): Pair[] => {
  const table = pairTerm(owner, [], holds);
  return pairs.map((cells) => ({ ...table, cells }));
};

/** One cell that holds one of these digits. */
export const amongTerm = (owner: string, cell: Cell, digits: Digits): Classes => ({
  term: "classes",
  owner,
  cells: [cell],
  classes: [digits],
});
