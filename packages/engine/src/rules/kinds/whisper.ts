import { zigzag } from "../../marks/zigzag.ts";
import { type PathByBody, pathsBy } from "../bodies/path.ts";
import { canChain, chained, chainedTerms } from "../chained.ts";
import { faulty, type Kind } from "../contract.ts";
import { endsOf, type Line, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";
import { byOf, lesserBy } from "../usual-by.ts";

interface Whisper extends Line {
  readonly by: number;
}

const farApart =
  (by: number) =>
  (first: number, second: number): boolean =>
    Math.abs(first - second) >= by;

export const whisper: Kind<PathByBody, Whisper> = {
  name: "whisper",
  body: pathsBy({ least: 2, leastBy: 1 }),
  resolve: (body, setting) => {
    const by = byOf(body, setting, 5);
    if (typeof by === "object") return by;
    const line = lineOf(body.cells, setting);
    const does = (other: number): boolean => canChain(line, setting, farApart(other));
    return does(by) ? { ...line, by } : faulty({ at: ["by"], read: String(by), right: lesserBy(by, does) });
  },
  scopes: (line) => chained(line, farApart(line.by)),
  terms: (line) => chainedTerms(line, farApart(line.by)),
  marks: ({ points }) => zigzag(points),
  words: ({ cells, by }) => ({
    rule: `Digits that are neighbours along a whisper line differ by at least ${by}.`,
    title: "Whisper lines",
    noun: "whisper line",
    plural: "whisper lines",
    at: endsOf(cells),
    holds: `differ by at least ${by} at every step`,
  }),
  alsoSaid: ["whisper", "differ by at least", "difference of at least"],
  readings: [mayNotRepeat("digits on a whisper line don't repeat", ({ cells }) => cells)],
  relabels: "mirror",
};
