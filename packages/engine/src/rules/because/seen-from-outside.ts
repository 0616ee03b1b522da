import { type Digits, digitsOf, has, listOf, max } from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, digitsSaid } from "../../speech/english/counts.ts";
import type { Asked } from "../contract.ts";

/** What a digit in a cell comes to at the least and at the most. */
export type Range = readonly [least: number, most: number];

/** How it is said that digits come to too little, and to too much. */
interface Said {
  short(digits: string, most: number): string;
  over(digits: string, least: number): string;
}

/** "a 3", "3 or 5", "3 to 6". */
const each = (digits: readonly number[]): string =>
  digits.length === 1 ? aDigit(digits[0]!) : digitsSaid(digitsOf(digits), "or");

/** Digits that come to too little or too much, those of one sort together, each sort by its nearest. */
export const missing = (
  wanted: number,
  out: Digits,
  rangeOf: (digit: number) => Range | undefined,
  said: Said,
): string | undefined => {
  const ranges = listOf(out).map((digit) => [digit, rangeOf(digit)] as const);
  const short = ranges.filter(([, range]) => range && range[1] < wanted);
  const over = ranges.filter(([, range]) => range && range[0] > wanted);
  if (short.length + over.length < ranges.length) return undefined;
  const digitsIn = (some: typeof ranges): string => each(some.map(([digit]) => digit));
  const clauses = [
    ...(short.length > 0 ? [said.short(digitsIn(short), Math.max(...short.map(([, range]) => range![1])))] : []),
    ...(over.length > 0 ? [said.over(digitsIn(over), Math.min(...over.map(([, range]) => range![0])))] : []),
  ];
  return clauses.join(", and ");
};

/** How many digits of the cells are seen from the first on: every count that some filling shows. */
export const countsSeen = (cells: readonly Cell[], { known, differ }: Asked): readonly number[] => {
  const apart = cells.every((cell, k) => cells.slice(k + 1).every((other) => differ(cell, other)));
  // By the digits used (the greatest alone where digits may repeat): the counts, as bits.
  let seen = new Map<number, number>([[0, 1]]);
  for (const cell of cells) {
    const further = new Map<number, number>();
    for (const [used, counts] of seen)
      for (const digit of listOf(known(cell))) {
        if (apart && has(used as Digits, digit)) continue;
        const isSeen = used === 0 || digit > max(used as Digits);
        const after = apart ? used | (1 << digit) : isSeen ? 1 << digit : used;
        further.set(after, (further.get(after) ?? 0) | (isSeen ? counts << 1 : counts));
      }
    seen = further;
  }
  return listOf([...seen.values()].reduce((all, counts) => all | counts, 0) as Digits);
};
