import { betweenDiamonds } from "../../marks/ended.ts";
import { type PathByBody, pathsBy } from "../bodies/path.ts";
import { faulty, type Kind, type Scope } from "../contract.ts";
import { holding } from "../edge.ts";
import { canMeetEnds, type EndsRule, readingEndsFirst } from "../ends-first.ts";
import { endsOf, innerOf, type Line, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";
import { byOf, lesserBy } from "../usual-by.ts";

interface Lockout extends Line {
  readonly by: number;
}

const ruleOf = (by: number): EndsRule => ({
  ends: (first, last) => Math.abs(first - last) >= by,
  between: (digit, first, last) => digit < Math.min(first, last) || digit > Math.max(first, last),
});

export const lockoutLine: Kind<PathByBody, Lockout> = {
  name: "lockout-line",
  body: pathsBy({ least: 3, leastBy: 1 }),
  resolve: (body, setting) => {
    const by = byOf(body, setting, 4);
    if (typeof by === "object") return by;
    const line = lineOf(body.cells, setting);
    const does = (other: number): boolean => canMeetEnds(line.cells, ruleOf(other), setting);
    return does(by) ? { ...line, by } : faulty({ at: ["by"], read: String(by), right: lesserBy(by, does) });
  },
  scopes: ({ cells, by }): Scope[] => {
    const { ends, between } = ruleOf(by);
    const [first, last] = endsOf(cells);
    const outside = ([a, digit, b]: readonly number[]): boolean => between(digit!, a!, b!);
    return [
      holding([first, last], ends),
      ...innerOf(cells).map((cell) => ({ cells: [first, cell, last], holds: outside })),
    ];
  },
  terms: ({ id, cells, by }) => [{ term: "automaton", owner: id, ...readingEndsFirst(cells, ruleOf(by)) }],
  marks: ({ points }) => betweenDiamonds(points),
  words: ({ cells, by }) => ({
    rule: `The two digits in the diamonds of a lockout line differ by at least ${by}. Digits on the line between them are greater than both or less than both.`,
    title: "Lockout lines",
    noun: "lockout line",
    plural: "lockout lines",
    at: endsOf(cells),
    holds: "lie outside the range of the two diamonds",
  }),
  alsoSaid: ["lockout", "diamond"],
  readings: [mayNotRepeat("digits on a lockout line don't repeat", ({ cells }) => cells)],
  relabels: "mirror",
};
