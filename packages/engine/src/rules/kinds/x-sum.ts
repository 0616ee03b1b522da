import { underlined } from "../../marks/outside.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { faulty, type Kind } from "../contract.ts";
import { canEnd, lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";

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
    if (state >= 0) return state < oneMore ? state : state - oneMore + digit;
    if (digit > cells.length) return undefined;
    return digit === 0 ? 0 : (digit - 1) * oneMore + digit;
  },
  ok: (state: number | string): boolean => state === sum,
});

export const xSum: Kind<XSumBody, XSum> = {
  name: "x-sum",
  body: outside({ numbers: { sum: whole() }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const made = { ...clue, sum: body.sum };
    if (canEnd(reading(made), setting)) return made;
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
  relabels: "none",
};
