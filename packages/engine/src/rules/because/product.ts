import { type Digits, digitsOf, isEmpty, listOf, without } from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigitOf, counted, listed } from "../../speech/english/counts.ts";
import type { Asked } from "../contract.ts";
import { digitIn, fillingsOf, forAll } from "./known-sums.ts";
import { onlyFilling } from "./total.ts";

const multiplied = (digits: readonly number[]): number => digits.reduce((product, digit) => product * digit, 1);

/** More open cells than this are not told by the digits that they share. */
const mostOpen = 5;

/** The open cells have one set of digits between them: "the other three multiply to 120, and that can only be 4, 5 and 6". */
const byFilling = (cells: readonly Cell[], product: number, out: Digits, asked: Asked): string | undefined => {
  const open = cells.filter((cell) => digitIn(cell, asked) === undefined);
  const settled = multiplied(cells.flatMap((cell) => digitIn(cell, asked) ?? []));
  if (open.length < 2 || open.length > mostOpen || settled === 0) return undefined;
  const said = onlyFilling(open, out, asked, (digits) => multiplied(digits) * settled === product);
  if (said === undefined) return undefined;
  if (open.length === cells.length) return `it can only be ${said}`;
  return `the other ${counted(open.length)} multiply to ${product / settled}, and that can only be ${said}`;
};

const restSaid = (many: number): string => (many === 1 ? "the other one is" : `the other ${counted(many)} multiply to`);

/** The others alone are too much or too little: "the other three multiply to at least 24, which leaves at most 1". */
const byBounds = (product: number, out: Digits, products: readonly number[]): string | undefined => {
  const [least, most] = [Math.min(...products), Math.max(...products)];
  const digits = listOf(out);
  if (least === most) return undefined;
  if (digits.every((digit) => digit * least > product))
    return `at least ${least}, which leaves at most ${Math.floor(product / least)}`;
  if (most > 0 && digits.every((digit) => digit * most < product))
    return `at most ${most}, which takes at least ${Math.ceil(product / most)} more`;
  return undefined;
};

/** More digits than this are not tried one by one. */
const mostTried = 3;

/** Digits that the number does not divide by, and those that the others do not make up for. */
const byDivision = (product: number, out: Digits, products: readonly number[], many: number): string | undefined => {
  const odd = listOf(out).filter((digit) => digit === 0 || product % digit !== 0);
  const tried = listOf(without(out, digitsOf(odd)));
  if (tried.length > mostTried || tried.some((digit) => products.includes(product / digit))) return undefined;
  const needs = listed(
    tried.map((digit) => product / digit),
    "or",
  );
  const rest = many === 1 ? `the other one can't be ${needs}` : `the others can't make ${needs}`;
  const clauses = [
    ...(odd.length > 0 ? [`${product} doesn't divide by ${listed(odd, "or")}`] : []),
    ...(tried.length > 0 ? [`with ${aDigitOf(digitsOf(tried))} ${rest}`] : []),
  ];
  return clauses.join(", and ");
};

/** Why cells that multiply to a number rule digits out. */
export const becauseOfProduct = (cells: readonly Cell[], product: number, asked: Asked): string | undefined =>
  forAll(asked, (cell, out) => {
    const rest = cells.filter((other) => other !== cell);
    const products = fillingsOf(rest, asked)?.map(multiplied);
    if (product === 0 || rest.length === 0 || !products || products.length === 0 || isEmpty(out)) return undefined;
    const bounds = byBounds(product, out, products);
    return (
      byFilling(cells, product, out, asked) ??
      (bounds === undefined ? undefined : `${restSaid(rest.length)} ${bounds}`) ??
      byDivision(product, out, products, rest.length)
    );
  });
