import { count, type Digits, digitsOf, has, listOf } from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, aDigitOf, counted, digitsSaid, listed } from "../../speech/english/counts.ts";
import type { Asked } from "../contract.ts";
import { assuming, byOddness, canBe, digitIn, fillingsOf, forAll, knownSums, oddness } from "./known-sums.ts";

/** "the other one is", "the other three make". */
const others = (many: number): string => (many === 1 ? "the other one is" : `the other ${counted(many)} make`);

/** What a total leaves of a cell by the least and the most that the others make: "the other two make at least 9". */
const byBounds = (total: number, rest: readonly Cell[], out: Digits, asked: Asked): string | undefined => {
  const sums = knownSums(rest, asked);
  const [least, most] = [sums[0], sums.at(-1)];
  if (least === undefined || most === undefined) return undefined;
  const isBig = (digit: number): boolean => digit > total - least;
  const isSmall = (digit: number): boolean => digit < total - most;
  const digits = listOf(out);
  if (!digits.every((digit) => isBig(digit) || isSmall(digit))) return undefined;
  if (least === most) return `${others(rest.length)} ${least}`;
  if (digits.every(isBig))
    return digits.every((digit) => digit >= total) && least > 0
      ? `${aDigitOf(out)} would leave nothing for ${rest.length === 1 ? "the other" : "the rest"}`
      : `${others(rest.length)} at least ${least}, and that leaves at most ${total - least}`;
  if (digits.every(isSmall))
    return `${others(rest.length)} at most ${most}, and it takes at least ${total - most} more`;
  return `${others(rest.length)} ${least} to ${most}, and that leaves ${total - most} to ${total - least}`;
};

/** With one other open cell: the digit that each would need there. */
const byPartner = (total: number, rest: readonly Cell[], cell: Cell, out: Digits, asked: Asked): string | undefined => {
  const open = rest.filter((other) => digitIn(other, asked) === undefined);
  const [partner] = open;
  if (open.length !== 1 || partner === undefined || count(out) > 2) return undefined;
  const settled = rest.reduce((sum, other) => sum + (digitIn(other, asked) ?? 0), 0);
  const needs = listOf(out).map((digit) => [digit, total - settled - digit] as const);
  if (needs.some(([digit, need]) => need < 0 || canBe(partner, need, assuming(asked, cell, digit)))) return undefined;
  const said = needs.map(([digit, need]) => `${aDigit(digit)} would need ${need === digit ? "another" : aDigit(need)}`);
  return `${listed(said)} beside it, which can't be`;
};

/** The only digits that can fill the open cells: "the other two can only be 1 and 3". */
export const onlyFilling = (
  cells: readonly Cell[],
  out: Digits,
  asked: Asked,
  does: (filling: readonly number[]) => boolean,
): string | undefined => {
  const fillings = fillingsOf(cells, asked)?.filter(does);
  const sorted = new Set(fillings?.map((filling) => [...filling].sort((a, b) => a - b).join()));
  const [one] = sorted;
  if (sorted.size !== 1 || one === undefined) return undefined;
  const digits = one.split(",").map(Number);
  if (digits.some((digit) => has(out, digit))) return undefined;
  if (digits.length === new Set(digits).size) return digitsSaid(digitsOf(digits));
  const list = [...new Set(digits)].map((digit) => {
    const times = digits.filter((other) => other === digit).length;
    return times === 1 ? aDigit(digit) : `${counted(times)} ${digit}s`;
  });
  return listed(list);
};

/** More open cells than this are not told by the digits that they share. */
const mostOpen = 5;

const byFilling = (total: number, cells: readonly Cell[], out: Digits, asked: Asked): string | undefined => {
  const open = cells.filter((cell) => digitIn(cell, asked) === undefined);
  if (open.length < 2 || open.length > mostOpen) return undefined;
  const settled = cells.reduce((sum, cell) => sum + (digitIn(cell, asked) ?? 0), 0);
  const said = onlyFilling(open, out, asked, (digits) => digits.reduce((sum, digit) => sum + digit, settled) === total);
  if (said === undefined) return undefined;
  // The clue's own name says what all of it makes.
  if (settled === 0 && open.length === cells.length) return `it can only be ${said}`;
  return `the other ${counted(open.length)} make ${total - settled}, and that can only be ${said}`;
};

/** Settled digits that add up, where there are several of them: "2 and 4 make 6". */
const bySettled = (total: number, rest: readonly Cell[], out: Digits, asked: Asked): string | undefined => {
  const digits = rest.map((cell) => digitIn(cell, asked));
  if (digits.length < 2 || digits.includes(undefined)) return undefined;
  const made = digits.reduce<number>((sum, digit) => sum + digit!, 0);
  if (has(out, total - made)) return undefined;
  const list = digits.length > 4 ? "the others" : listed(digits as number[]);
  return `${list} make ${made}, which leaves ${total - made}`;
};

/** Why cells that add up to a total rule digits out; "it" is what they are, a clue that is named by its total. */
export const becauseOfTotal = (cells: readonly Cell[], total: number, asked: Asked): string | undefined =>
  forAll(asked, (cell, out) => {
    const rest = cells.filter((other) => other !== cell);
    if (!cells.includes(cell) || rest.length === 0) return undefined;
    if (rest.length === 1 && digitIn(rest[0]!, asked) !== undefined) return undefined;
    return (
      bySettled(total, rest, out, asked) ??
      byFilling(total, cells, out, asked) ??
      byPartner(total, rest, cell, out, asked) ??
      byBounds(total, rest, out, asked) ??
      byEach(total, rest, cell, out, asked) ??
      byParity(total, rest, out, asked)
    );
  });

const byParity = (total: number, rest: readonly Cell[], out: Digits, asked: Asked): string | undefined => {
  const odd = oddness(rest, asked);
  return odd === undefined ? undefined : byOddness(total + odd, out);
};

/** One digit, tried: "with a 4 the other two make at most 7". */
const byEach = (total: number, rest: readonly Cell[], cell: Cell, out: Digits, asked: Asked): string | undefined => {
  if (count(out) !== 1) return undefined;
  const [digit] = listOf(out) as [number];
  const sums = knownSums(rest, assuming(asked, cell, digit));
  const [least, most] = [sums[0], sums.at(-1)];
  if (least === undefined || most === undefined) return undefined;
  if (most + digit < total) return `with ${aDigit(digit)}, ${others(rest.length)} at most ${most}`;
  return least + digit > total ? `with ${aDigit(digit)}, ${others(rest.length)} at least ${least}` : undefined;
};
