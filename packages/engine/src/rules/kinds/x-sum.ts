import { both, type Digits, digitsOf, has, isEmpty, listOf } from "../../board/digits.ts";
import { underlined } from "../../marks/outside.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, counted, listed } from "../../speech/english/counts.ts";
import { assuming, digitIn, fillingsOf, forAll, knownSums } from "../because/known-sums.ts";
import { missing, type Range } from "../because/seen-from-outside.ts";
import { becauseOfTotal } from "../because/total.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { type Asked, faulty, type Kind, type Setting } from "../contract.ts";
import { lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";

interface XSumBody extends OutsideBody {
  readonly sum: number;
}
interface XSum extends OutsideClue {
  readonly sum: number;
}

/** The state is the sum so far, and this much more for each digit still to be added. */
const oneMore = 1024;

const reading = ({ cells, sum }: XSum) => ({
  cells,
  start: -1,
  next: (read: number | string, digit: number): number | undefined => {
    const state = Number(read);
    if (state % oneMore > sum) return undefined;
    if (state >= 0) return state < oneMore ? state : state - oneMore + digit;
    if (digit > cells.length) return undefined;
    return digit === 0 ? 0 : (digit - 1) * oneMore + digit;
  },
  ok: (state: number | string): boolean => state === sum,
});

/** What the first digits come to where the first of them is this one. */
const rangeWith = (cells: readonly Cell[], asked: Asked, first: number): Range | undefined => {
  const sums = first > cells.length ? [] : knownSums(cells.slice(0, first), assuming(asked, cells[0]!, first));
  return sums.length === 0 ? undefined : [sums[0]!, sums.at(-1)!];
};

/** Digits that can't be the first, by how far their cells can count. */
const notFirst = ({ cells, sum }: XSum, asked: Asked, out: Digits): string | undefined =>
  missing(sum, out, (digit) => rangeWith(cells, asked, digit), {
    short: (digits, most) => `with ${digits} first it's at most ${most}`,
    over: (digits, least) => `with ${digits} first it's at least ${least}`,
  });

/** More first digits than this are not gone through one by one. */
const mostFirsts = 2;

/** The first digits with which the sum can be made, each with the digits that must follow it. */
const followers = (
  { cells, sum }: XSum,
  asked: Asked,
): readonly (readonly [first: number, rest: Digits])[] | undefined => {
  const [first] = cells as [Cell];
  const all = listOf(asked.known(first)).flatMap((digit) => {
    const rest = cells.slice(1, digit);
    const then = assuming(asked, first, digit);
    const isEach = digit > cells.length || !knownSums(cells.slice(0, digit), then).includes(sum);
    const sets = isEach ? [] : fillingsOf(rest, then)?.filter((filling) => totalOf(filling) === sum - digit);
    return isEach ? [] : [[digit, [...new Set(sets?.map(digitsOf))]] as const];
  });
  if (all.length > mostFirsts || all.some(([, sets]) => sets.length !== 1)) return undefined;
  return all.map(([digit, sets]) => [digit, sets[0]!]);
};
const totalOf = (digits: readonly number[]): number => digits.reduce((sum, digit) => sum + digit, 0);

/** Digits that are among those that must follow the first in no case. */
const notFollowing = (clue: XSum, asked: Asked, cell: Cell, out: Digits): string | undefined => {
  const place = clue.cells.indexOf(cell);
  const cases = followers(clue, asked);
  if (!cases || cases.length === 0) return undefined;
  if (cases.some(([first, rest]) => place >= first || !isEmpty(both(rest, out)))) return undefined;
  return cases
    .map(([first, rest]) => `with ${aDigit(first)} first the others are ${listed(listOf(rest))}`)
    .join(", and ");
};

/** Digits that can't be where the first digit is known to count. */
const notCounted = ({ cells, sum }: XSum, asked: Asked): string | undefined => {
  const first = digitIn(cells[0]!, asked);
  const said = first === undefined ? undefined : becauseOfTotal(cells.slice(0, first), sum, asked);
  return said === undefined ? undefined : `only ${counted(first!)} cells count, and ${said.replace(/^it /, "they ")}`;
};

/** Whether the first X digits can add up to this: of all rows so far, the sums behind the first cell, as bits. */
const canReach = ({ cells, sum }: XSum, { domains }: Pick<Setting, "domains">): boolean => {
  const first = domains[cells[0]!]!;
  if (has(first, 0) && sum === 0) return true;
  let sums = 1n;
  for (const [k, cell] of cells.entries()) {
    const digits = listOf(domains[cell]!);
    if (k > 0) sums = digits.reduce((all, digit) => all | (sums << BigInt(digit)), 0n);
    const rest = sum - k - 1;
    if (rest >= 0 && k < 31 && has(first, k + 1) && ((sums >> BigInt(rest)) & 1n) === 1n) return true;
  }
  return false;
};

export const xSum: Kind<XSumBody, XSum> = {
  name: "x-sum",
  body: outside({ numbers: { sum: whole() }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const made = { ...clue, sum: body.sum };
    if (canReach(made, setting)) return made;
    const right = `a sum that the first X digits of ${lineSaid(clue.line, setting)} can make, X being the first of them`;
    return faulty({ at: ["sum"], read: String(body.sum), right });
  },
  scopes: (clue) => [reading(clue)],
  terms: (clue) => [{ term: "automaton", owner: clue.id, ...reading(clue) }],
  marks: ({ stand, sum }) => underlined(stand, String(sum)),
  words: ({ cells, sum, line }) => ({
    rule: `An underlined number is the sum of the first X digits seen from its side. X is the very first of them${line.grid.digits[0] === 0 ? "; where X is 0, the sum is 0" : ", and it counts too"}.`,
    title: "X-sums",
    noun: "X-sum",
    plural: "X-sums",
    called: `X-sum of ${sum}`,
    at: cells,
    holds: `add up to ${sum} as far as the first one counts`,
  }),
  because: (clue, asked) =>
    forAll(asked, (cell, out) =>
      cell === clue.cells[0]
        ? notFirst(clue, asked, out)
        : (notCounted(clue, asked) ?? notFollowing(clue, asked, cell, out)),
    ),
  alsoSaid: ["x sum", "first x"],
  relabels: "none",
};
