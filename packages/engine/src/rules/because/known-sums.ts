import { type Digits, has, isOne, listOf, min, only, without } from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Asked } from "../contract.ts";
import { sumsOf, sumsOfDifferent } from "../reachable.ts";

/** More partial fillings than this are not looked through. */
const mostTries = 20_000;

const isEach = (cells: readonly Cell[], differ: Asked["differ"]): boolean =>
  cells.every((cell, k) => cells.slice(k + 1).every((other) => differ(cell, other)));
const isNone = (cells: readonly Cell[], differ: Asked["differ"]): boolean =>
  cells.every((cell, k) => !cells.slice(k + 1).some((other) => differ(cell, other)));

/** Every filling of the cells by what is known of them; undefined where that is too many. */
export const fillingsOf = (
  cells: readonly Cell[],
  { known, differ }: Asked,
): readonly (readonly number[])[] | undefined => {
  let fillings: (readonly number[])[] = [[]];
  for (const [k, cell] of cells.entries()) {
    const rivals = cells.slice(0, k).flatMap((other, place) => (differ(cell, other) ? [place] : []));
    fillings = fillings.flatMap((filling) =>
      listOf(known(cell))
        .filter((digit) => rivals.every((place) => filling[place] !== digit))
        .map((digit) => [...filling, digit]),
    );
    if (fillings.length > mostTries) return undefined;
  }
  return fillings;
};

/** The sums that the cells can make, ascending: exact but for cells some of which differ, where they are too many. */
export const knownSums = (cells: readonly Cell[], asked: Asked): readonly number[] => {
  const digits = cells.map(asked.known);
  if (isNone(cells, asked.differ)) return sumsOf(digits);
  if (isEach(cells, asked.differ)) return [...sumsOfDifferent(digits, Number.MAX_SAFE_INTEGER)].sort((a, b) => a - b);
  const fillings = fillingsOf(cells, asked);
  if (!fillings) return sumsOf(digits);
  const sums = fillings.map((filling) => filling.reduce((sum, digit) => sum + digit, 0));
  return [...new Set(sums)].sort((a, b) => a - b);
};

/** The same question where one cell is that digit, seen by those that differ from it. */
export const assuming = (asked: Asked, cell: Cell, digit: number): Asked => ({
  ...asked,
  known: (other) => {
    if (other === cell) return only(digit);
    return asked.differ(other, cell) ? without(asked.known(other), only(digit)) : asked.known(other);
  },
});

/** The digit of a cell of which no other is left. */
export const digitIn = (cell: Cell, { known }: Asked): number | undefined =>
  isOne(known(cell)) ? min(known(cell)) : undefined;

export const canBe = (cell: Cell, digit: number, { known }: Asked): boolean => has(known(cell), digit);

/** The same answer for every cell that loses digits, or none; a cell of which one digit is left has none to lose. */
export const forAll = (asked: Asked, reason: (cell: Cell, out: Digits) => string | undefined): string | undefined => {
  if ([...asked.removes.keys()].some((cell) => isOne(asked.known(cell)))) return undefined;
  const [first, ...others] = new Set([...asked.removes].map(([cell, out]) => reason(cell, out)));
  return others.length === 0 ? first : undefined;
};

/** Clauses each of which accounts for some digits, one for each of them where there is one; at most two. */
export const accounting = (out: Digits, why: (digit: number) => string | undefined): string | undefined => {
  const clauses = new Set(listOf(out).map(why));
  return clauses.has(undefined) || clauses.size > 2 ? undefined : [...clauses].join(", and ");
};

/** Whether the cells can only make an odd or only an even sum; undefined where they can make both. */
export const oddness = (cells: readonly Cell[], { known }: Asked): 0 | 1 | undefined => {
  const each = cells.map((cell) => [...new Set(listOf(known(cell)).map((digit) => digit % 2))]);
  if (each.some((sorts) => sorts.length !== 1)) return undefined;
  return (each.reduce((sum, [sort]) => sum + sort!, 0) % 2) as 0 | 1;
};

/** What odd and even demand of a cell, where the other digits have no choice in it. */
export const byOddness = (wanted: number, out: Digits): string | undefined => {
  if (listOf(out).some((digit) => digit % 2 === wanted % 2)) return undefined;
  return `going by odd and even it must be ${wanted % 2 === 0 ? "even" : "odd"}`;
};
