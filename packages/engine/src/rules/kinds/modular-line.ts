import { both, count, type Digits, digitsOf, listOf, min } from "../../board/digits.ts";
import { tokensInTurn } from "../../marks/tokens.ts";
import { counted, listed } from "../../speech/english/counts.ts";
import { domainsIn } from "../area.ts";
import { type PathByBody, pathsBy } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { digitsIn } from "../cells.ts";
import { faulty, type Kind } from "../contract.ts";
import { canTakeTurns, type InTurn, inTurn, inTurnTerms } from "../in-turn.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";

const all = Array.from({ length: 32 }, (_, digit) => digit);
const remainders = (by: number): Digits[] =>
  all.slice(0, by).map((remainder) => digitsOf(all.filter((digit) => digit % by === remainder)));

interface ModularLine extends InTurn {
  /** What its cells can hold. */
  readonly digits: Digits;
}

/** The digits by what they leave, the least first: "So they hold one each of 1 4, 2 5 and 3 6." Left unsaid where they are many. */
const setsSaid = ({ classes, digits }: ModularLine): string => {
  if (count(digits) > 10) return "";
  const sets = classes.map((set) => both(set, digits)).sort((a, b) => min(a) - min(b));
  return ` So they hold one each of ${listed(sets.map((set) => listOf(set).join(" ")))}.`;
};

export const modularLine: Kind<PathByBody, ModularLine> = {
  name: "modular-line",
  body: pathsBy({ least: 2, leastBy: 2 }),
  resolve: ({ cells: places, by = 3 }, setting) => {
    if (places.length < by)
      return faulty({
        at: ["cells"],
        read: writePath(places),
        right: `${counted(by)} cells or more, as many as it divides by`,
      });
    const cells = lineOf(places, setting);
    const line = { ...cells, classes: remainders(by), digits: digitsIn(setting, cells.cells) };
    if (by <= 32 && canTakeTurns(line, setting)) return line;
    const right = `cells of which ${counted(by)} in a row can leave all remainders when divided by ${by}; these have ${domainsText(domainsIn(setting, line))}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: inTurn,
  terms: inTurnTerms,
  marks: ({ points, classes }) => tokensInTurn(points, classes.length),
  words: (line) => {
    const by = line.classes.length;
    return {
      rule: `Any ${counted(by)} cells in a row on a modular line leave different remainders when divided by ${by}.${setsSaid(line)}`,
      title: "Modular lines",
      noun: "modular line",
      plural: "modular lines",
      at: endsOf(line.cells),
      holds: `leave different remainders when divided by ${by}`,
    };
  },
  alsoSaid: ["modul", "remainder"],
  readings: [mayNotRepeat("digits on a modular line don't repeat", ({ cells }) => cells)],
  relabels: "mirror",
};
