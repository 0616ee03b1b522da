import { has, listOf } from "../../board/digits.ts";
import { betweenSlices } from "../../marks/outside.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { faulty, type Kind, type Setting } from "../contract.ts";
import { lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";
import { becauseOfSandwich } from "./sandwich.because.ts";

interface SandwichBody extends OutsideBody {
  readonly sum: number;
}
interface Sandwich extends OutsideClue {
  readonly low: number;
  readonly high: number;
  readonly sum: number;
}

const before = 0;
const after = 1;

/** Read along the line; between the slices the state is the sum so far, doubled, past 2 (low came first) or 3. */
const reading = ({ cells, low, high, sum }: Sandwich) => ({
  cells,
  start: before,
  next: (read: number | string, digit: number): number | undefined => {
    const state = Number(read);
    if (digit !== low && digit !== high) return state < 2 ? state : state + 2 * digit;
    const open = digit === low ? 2 : 3;
    if (state === before) return open;
    return state > after && state % 2 !== open % 2 && Math.floor((state - 2) / 2) === sum ? after : undefined;
  },
  ok: (state: number | string): boolean => state === after,
});

/** The sums that digits between the two can make, as bits: those behind a low or a high digit, and those that are closed. */
const sumsIn = ({ cells, low, high }: Sandwich, { domains }: Pick<Setting, "domains">): bigint => {
  let [isBefore, behindLow, behindHigh, closed] = [true, 0n, 0n, 0n];
  for (const cell of cells) {
    const [hasLow, hasHigh] = [has(domains[cell]!, low), has(domains[cell]!, high)];
    const others = listOf(domains[cell]!).filter((digit) => digit !== low && digit !== high);
    const on = (sums: bigint): bigint => others.reduce((all, digit) => all | (sums << BigInt(digit)), 0n);
    closed = (others.length > 0 ? closed : 0n) | (hasHigh ? behindLow : 0n) | (hasLow ? behindHigh : 0n);
    behindLow = on(behindLow) | (isBefore && hasLow ? 1n : 0n);
    behindHigh = on(behindHigh) | (isBefore && hasHigh ? 1n : 0n);
    isBefore &&= others.length > 0;
  }
  return closed;
};

export const sandwich: Kind<SandwichBody, Sandwich> = {
  name: "sandwich",
  body: outside({ numbers: { sum: whole() }, from: "optional" }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const { digits } = clue.line.grid;
    const made = { ...clue, low: digits[0]!, high: digits.at(-1)!, sum: body.sum };
    if (((sumsIn(made, setting) >> BigInt(body.sum)) & 1n) === 1n) return made;
    const right = `a sum that digits between the ${made.low} and the ${made.high} of ${lineSaid(clue.line, setting)} can make`;
    return faulty({ at: ["sum"], read: String(body.sum), right });
  },
  scopes: (sandwich) => [reading(sandwich)],
  terms: (sandwich) => [{ term: "automaton", owner: sandwich.id, ...reading(sandwich) }],
  marks: ({ stand, sum }) => betweenSlices(stand, String(sum)),
  words: ({ cells, low, high, sum }) => ({
    rule: `A number between two slices is a sandwich sum. It adds up the digits between the ${low} and the ${high} of its row or column.`,
    title: "Sandwich sums",
    noun: "sandwich",
    plural: "sandwiches",
    called: `sandwich of ${sum}`,
    at: cells,
    holds: `add up to ${sum} between the ${low} and the ${high}`,
  }),
  alsoSaid: ["sandwich"],
  because: becauseOfSandwich,
  relabels: "none",
};
