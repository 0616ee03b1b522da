import { type Digits, digitsOf } from "../../board/digits.ts";
import { tokensInTurn } from "../../marks/tokens.ts";
import { domainsIn } from "../area.ts";
import { type PathByBody, pathsBy } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind } from "../contract.ts";
import { canTakeTurns, type InTurn, inTurn, inTurnTerms } from "../in-turn.ts";
import { domainsText, inWords } from "../in-words.ts";
import { endsOf, lineOf } from "../line.ts";

const digits = Array.from({ length: 32 }, (_, digit) => digit);
const remainders = (by: number): Digits[] =>
  digits.slice(0, by).map((remainder) => digitsOf(digits.filter((digit) => digit % by === remainder)));

export const modularLine: Kind<PathByBody, InTurn> = {
  name: "modular-line",
  body: pathsBy({ least: 2, leastBy: 2 }),
  resolve: ({ cells: places, by = 3 }, setting) => {
    if (places.length < by)
      return faulty({
        at: ["cells"],
        read: writePath(places),
        right: `${inWords(by)} cells or more, as many as it divides by`,
      });
    const line = { ...lineOf(places, setting), classes: remainders(by) };
    if (by <= 32 && canTakeTurns(line, setting)) return line;
    const right = `cells of which ${inWords(by)} in a row can leave all remainders when divided by ${by}; these have ${domainsText(domainsIn(setting, line))}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: inTurn,
  terms: inTurnTerms,
  marks: ({ points, classes }) => tokensInTurn(points, classes.length),
  words: ({ cells, classes: { length: by } }) => ({
    rule: `Any ${inWords(by)} cells in a row on a modular line leave ${by === 2 ? "both" : `all ${inWords(by)}`} remainders when divided by ${by}.`,
    title: "Modular lines",
    noun: "modular line",
    plural: "modular lines",
    at: endsOf(cells),
    holds: `leave different remainders when divided by ${by}`,
  }),
  relabels: "mirror",
};
