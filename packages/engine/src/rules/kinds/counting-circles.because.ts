import { type Digits, digitsOf, has, listOf } from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, counted, listed } from "../../speech/english/counts.ts";
import { combinationsTo } from "../because/combinations-to.ts";
import { accounting, canBe, digitIn, forAll } from "../because/known-sums.ts";
import type { Asked } from "../contract.ts";

interface Circles {
  readonly cells: readonly Cell[];
  readonly digits: readonly number[];
}

/** Circles that may hold the digit together, at the most; those that must differ count once where they are all of one house. */
const mostOf = (cells: readonly Cell[], digit: number, asked: Asked): number => {
  const open = cells.filter((cell) => canBe(cell, digit, asked));
  const grow = (from: number, taken: readonly Cell[]): number => {
    let most = taken.length;
    for (let k = from; k < open.length && most < digit; k++)
      if (!taken.some((cell) => asked.differ(cell, open[k]!))) most = Math.max(most, grow(k + 1, [...taken, open[k]!]));
    return most;
  };
  return grow(0, []);
};

const placed = (cells: readonly Cell[], digit: number, asked: Asked): number =>
  cells.filter((cell) => digitIn(cell, asked) === digit).length;

/** The sets of digits that the circles can hold between them: those settled are among them, and each has circles enough. */
const setsOf = ({ cells, digits }: Circles, asked: Asked): readonly Digits[] => {
  const usable = digits.filter((digit) => mostOf(cells, digit, asked) >= digit);
  const settled = [...new Set(cells.map((cell) => digitIn(cell, asked)))].filter((digit) => digit !== undefined);
  const all = digitsOf(usable);
  return combinationsTo(all, cells.length).filter((set) => settled.every((digit) => has(set, digit)));
};

/** "four 4s and two 2s". */
const timesSaid = (set: Digits): string =>
  listed(
    listOf(set)
      .reverse()
      .map((digit) => (digit === 1 ? "one 1" : `${counted(digit)} ${digit}s`)),
  );

const whyNot = (circles: Circles, asked: Asked, sets: readonly Digits[], digit: number): string | undefined => {
  const { cells } = circles;
  if (placed(cells, digit, asked) === digit)
    return digit === 1 ? "the one 1 is there already" : `there are ${counted(digit)} ${digit}s already`;
  const [only, another] = sets;
  if (only !== undefined && another === undefined && !has(only, digit))
    return `its ${counted(cells.length)} circles can only be ${timesSaid(only)}`;
  const most = mostOf(cells, digit, asked);
  if (most >= digit) return undefined;
  return `${aDigit(digit)} means ${counted(digit)} circles with ${aDigit(digit)}, and at most ${counted(most)} can have one`;
};

/** A digit that the others by themselves can't hold often enough. */
const needed = (
  { cells, digits }: Circles,
  asked: Asked,
  sets: readonly Digits[],
  cell: Cell,
  out: Digits,
): string | undefined => {
  const others = cells.filter((other) => other !== cell);
  const isShort = (digit: number): boolean => mostOf(others, digit, asked) < digit;
  const always = digits.find((digit) => !has(out, digit) && sets.every((set) => has(set, digit)) && isShort(digit));
  if (always === undefined || sets.length === 0 || always === 1) return undefined;
  return `${counted(always)} circles must hold ${aDigit(always)}, and at most ${counted(always - 1)} of the others can`;
};

/** Why circles that count themselves rule digits out. */
export const becauseOfCounting = (circles: Circles, asked: Asked): string | undefined =>
  forAll(asked, (cell, out) => {
    const sets = setsOf(circles, asked);
    return needed(circles, asked, sets, cell, out) ?? accounting(out, (digit) => whyNot(circles, asked, sets, digit));
  });
