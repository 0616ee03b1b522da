import { behindPost } from "../../marks/outside.ts";
import { counted, listed } from "../../speech/english/counts.ts";
import { digits as digitList, optional, whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { canHold } from "../can-hold.ts";
import { faulty, type Kind, type Scope } from "../contract.ts";
import { type OutsideClue, outsideClue } from "../outside-clue.ts";

interface OutsideDigitsBody extends OutsideBody {
  readonly digits: readonly number[];
  readonly within?: number;
}
interface OutsideDigits extends OutsideClue {
  /** Ascending, each as often as it is named. */
  readonly digits: readonly number[];
}

/** What is left of the list once the digit is struck from it. */
const struck = (list: string, digit: number): string => {
  const left = list.split(" ");
  const place = left.indexOf(String(digit));
  return place < 0 ? list : left.filter((_, k) => k !== place).join(" ");
};

/** The state is what has still to come. */
const reading = ({ cells, digits }: Pick<OutsideDigits, "cells" | "digits">): Extract<Scope, { start: unknown }> => ({
  cells,
  start: digits.join(" "),
  next: (left, digit) => struck(left as string, digit),
  ok: (left) => left === "",
});

const nearest = (cells: number): string => (cells === 1 ? "the first cell" : `the first ${counted(cells)} cells`);
const hasTwins = (digits: readonly number[]): boolean => new Set(digits).size < digits.length;

export const outsideDigits: Kind<OutsideDigitsBody, OutsideDigits> = {
  name: "outside-digits",
  body: outside({ numbers: { digits: digitList(), within: optional(whole({ least: 1 })) }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const { cells: all, boxDepth } = clue.line;
    const within = body.within ?? boxDepth ?? Math.min(3, all.length);
    if (within > all.length)
      return faulty({ at: ["within"], read: String(within), right: `at most ${all.length}, the cells of the line` });
    const made = { ...clue, cells: all.slice(0, within), digits: [...body.digits].sort((a, b) => a - b) };
    if (canHold(made.cells, made.digits, setting)) return made;
    const right = `digits that ${nearest(within)} can hold together`;
    return faulty({ at: ["digits"], read: listed(body.digits), right });
  },
  scopes: (clue) => [reading(clue)],
  terms: ({ id, cells, digits }) => [{ term: "contains", owner: id, cells, digits }],
  marks: ({ stand, digits }) => behindPost(stand, digits),
  words: ({ cells, digits }) => ({
    rule: `Digits at a dotted post stand in ${nearest(cells.length)} from that side, in any order.${hasTwins(digits) ? " One that is written twice stands there twice." : ""}`,
    title: "Outside digits",
    noun: "outside clue",
    plural: "outside clues",
    called: `outside clue of ${listed(digits)}`,
    at: cells,
    holds: `hold ${listed(digits)}`,
  }),
  alsoSaid: ["outside"],
  relabels: "none",
};
