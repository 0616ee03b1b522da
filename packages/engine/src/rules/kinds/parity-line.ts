import { circlesAndSquares } from "../../marks/tokens.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { canChain, chained, chainedTerms } from "../chained.ts";
import { faulty, type Kind } from "../contract.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, type Line, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";

const areOddAndEven = (first: number, second: number): boolean => first % 2 !== second % 2;

export const parityLine: Kind<PathBody, Line> = {
  name: "parity-line",
  body: paths({ least: 2 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    if (canChain(line, setting, areOddAndEven)) return line;
    const right = `cells that can be odd and even in turn; these have ${domainsText(domainsIn(setting, line))}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: (line) => chained(line, areOddAndEven),
  terms: (line) => chainedTerms(line, areOddAndEven),
  marks: ({ points }) => circlesAndSquares(points),
  words: ({ cells }) => ({
    rule: "Digits along a parity line are odd and even in turn. The line may start with either.",
    title: "Parity lines",
    noun: "parity line",
    plural: "parity lines",
    at: endsOf(cells),
    holds: "are odd and even in turn",
  }),
  alsoSaid: ["parity", "alternat", "odd ... even"],
  readings: [mayNotRepeat("digits on a parity line don't repeat", ({ cells }) => cells)],
  relabels: "mirror",
};
