import {
  both,
  type Digits,
  digitsOf,
  either,
  has,
  isEmpty,
  isWithin,
  listOf,
  none,
  without,
} from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, counted, listed } from "../../speech/english/counts.ts";
import { combinationsTo } from "../because/combinations-to.ts";
import { assuming, canBe, digitIn, forAll, knownSums } from "../because/known-sums.ts";
import type { Asked } from "../contract.ts";

interface Sandwich {
  readonly cells: readonly Cell[];
  readonly low: number;
  readonly high: number;
  readonly sum: number;
}

/** Where the slices can stand: the places, from 0, of the low and of the high one. */
type Span = readonly [low: number, high: number];

const between = ([a, b]: Span): readonly [number, number] => [Math.min(a, b) + 1, Math.max(a, b)];
const isBetween = (place: number, span: Span): boolean => place >= between(span)[0] && place < between(span)[1];
const lengthOf = ([a, b]: Span): number => Math.abs(a - b) - 1;

/** What is known once the slices are taken away: only they hold these digits. */
const filled = ({ low, high }: Sandwich, asked: Asked): Asked => ({
  ...asked,
  known: (cell) => without(asked.known(cell), digitsOf([low, high])),
});

const spansOf = (sandwich: Sandwich, asked: Asked): Span[] => {
  const { cells, low, high, sum } = sandwich;
  const middle = filled(sandwich, asked);
  const fits = (span: Span): boolean =>
    knownSums(cells.slice(...between(span)), middle).includes(sum) &&
    cells.every((cell, k) => k === span[0] || k === span[1] || !isEmpty(middle.known(cell)));
  const places = [...cells.keys()];
  return places.flatMap((a) =>
    places
      .filter((b) => a !== b && canBe(cells[a]!, low, asked) && canBe(cells[b]!, high, asked))
      .map((b): Span => [a, b])
      .filter(fits),
  );
};

/** All sets of digits that lie between by their sum alone, as no digit repeats in the line. */
const fillingsOf = ({ cells, low, high, sum }: Sandwich, asked: Asked): readonly Digits[] => {
  const all = cells.reduce<Digits>((digits, cell) => either(digits, asked.known(cell)), none);
  return combinationsTo(without(all, digitsOf([low, high])), sum);
};

const lengthsSaid = (lengths: readonly number[]): string =>
  `${listed(lengths.map(counted), "or")} ${lengths.length === 1 && lengths[0] === 1 ? "cell" : "cells"}`;

/** A slice that would have the other too near, too far, or where it can't stand. */
const noSlice = (sandwich: Sandwich, asked: Asked, place: number, slice: number): string | undefined => {
  const { cells, low, high, sum } = sandwich;
  const other = slice === low ? high : low;
  const lengths = [...new Set(fillingsOf(sandwich, asked).map((digits) => listOf(digits).length))].sort(
    (a, b) => a - b,
  );
  const isFree = (at: number): boolean => cells[at] !== undefined && canBe(cells[at]!, other, asked);
  if (lengths.length === 0 || lengths.length > 3) return undefined;
  if (lengths.some((length) => isFree(place + length + 1) || isFree(place - length - 1))) return undefined;
  if (sum === 0) return `${aDigit(slice)} would want the ${other} right beside it, which can't be`;
  return `${sum} takes ${lengthsSaid(lengths)}, and no ${other} can be that far from ${aDigit(slice)} there`;
};

const isApart = ({ cells }: Sandwich, { differ }: Asked): boolean =>
  cells.every((cell, k) => cells.slice(k + 1).every((other) => differ(cell, other)));

/** A cell that lies between wherever the slices are, and what can lie there. */
const alwaysBetween = (sandwich: Sandwich, asked: Asked, place: number, out: Digits): string | undefined => {
  const { low, high, sum } = sandwich;
  const spans = spansOf(sandwich, asked);
  if (spans.length === 0 || !spans.every((span) => isBetween(place, span))) return undefined;
  const where = "this place is always between the slices";
  if (isWithin(out, digitsOf([low, high]))) return where;
  const used = fillingsOf(sandwich, asked).reduce<Digits>(either, none);
  const only = fillingsOf(sandwich, asked);
  if (only.length !== 1 || !isEmpty(both(out, used))) return undefined;
  return `${sum} can only be ${listed(listOf(used))}, and ${where}`;
};

/** A digit that must lie between, and so nowhere else. */
const neededBetween = (sandwich: Sandwich, asked: Asked, place: number, out: Digits): string | undefined => {
  const spans = spansOf(sandwich, asked);
  if (spans.length === 0 || spans.some((span) => isBetween(place, span))) return undefined;
  const fillings = fillingsOf(sandwich, asked).filter((digits) =>
    spans.some((span) => lengthOf(span) === listOf(digits).length),
  );
  const always = fillings.reduce<Digits>(both, -1 as Digits);
  if (fillings.length === 0 || !isWithin(out, always)) return undefined;
  return `${sandwich.sum} needs ${listed(listOf(out).map(aDigit))} between the slices`;
};

/** Slices that can stand in one way only, and what is then missing between them. */
const oneSpan = (sandwich: Sandwich, asked: Asked, place: number, out: Digits): string | undefined => {
  const { cells, low, high, sum } = sandwich;
  const [span, another] = spansOf(sandwich, asked);
  if (span === undefined || another !== undefined) return undefined;
  const inside = cells.slice(...between(span));
  const [a, b] = span;
  if (place === a || place === b) {
    const beside = digitIn(cells[place === a ? b : a]!, asked) === undefined ? undefined : place === a ? high : low;
    if (has(out, place === a ? low : high) || beside === undefined) return undefined;
    if (sum === 0)
      return `the ${beside} has the ${place === a ? low : high} right beside it, and this is the only room`;
    return `only this far from the ${beside} is there room for ${sum} between`;
  }
  const rest = inside.filter((cell) => cell !== cells[place]);
  const digits = rest.map((cell) => digitIn(cell, asked));
  if (!isBetween(place, span) || digits.includes(undefined)) return undefined;
  const made = digits.reduce<number>((all, digit) => all + digit!, 0);
  if (has(out, sum - made)) return undefined;
  const slices = `the ${low} and the ${high} can only be on either side`;
  return rest.length === 0 ? slices : `${slices} of this and the ${listed(digits as number[])}`;
};

/** Wherever the slices are, one is in this place: what else could be there? */
const mustBeSlice = (sandwich: Sandwich, asked: Asked, place: number, out: Digits): string | undefined => {
  const spans = spansOf(sandwich, asked);
  const isOff = !isEmpty(both(out, digitsOf([sandwich.low, sandwich.high])));
  if (isOff || spans.length === 0 || !spans.every((span) => span.includes(place))) return undefined;
  return `without a slice there, what lies between can't make ${sandwich.sum}`;
};

/** What lies between would not make the sum wherever the slices are. */
const noSum = (sandwich: Sandwich, asked: Asked, place: number, out: Digits): string | undefined => {
  const [digit, another] = listOf(out);
  if (digit === undefined || another !== undefined) return undefined;
  if (spansOf(sandwich, assuming(asked, sandwich.cells[place]!, digit)).length > 0) return undefined;
  const what = digit === sandwich.low || digit === sandwich.high ? "what lies between" : "the slices";
  return what === "the slices"
    ? `with ${aDigit(digit)} there, no place of the slices leaves ${sandwich.sum} between`
    : `with the ${digit} there, ${what} can't make ${sandwich.sum}`;
};

export const becauseOfSandwich = (sandwich: Sandwich, asked: Asked): string | undefined =>
  forAll(asked, (cell, out) => {
    const place = sandwich.cells.indexOf(cell);
    const [slice, another] = listOf(out);
    const isSlice = another === undefined && (slice === sandwich.low || slice === sandwich.high);
    return (
      oneSpan(sandwich, asked, place, out) ??
      (isApart(sandwich, asked) ? alwaysBetween(sandwich, asked, place, out) : undefined) ??
      (isApart(sandwich, asked) ? neededBetween(sandwich, asked, place, out) : undefined) ??
      (isSlice && isApart(sandwich, asked) ? noSlice(sandwich, asked, place, slice!) : undefined) ??
      mustBeSlice(sandwich, asked, place, out) ??
      noSum(sandwich, asked, place, out)
    );
  });
