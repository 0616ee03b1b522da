import { looseDots } from "../../marks/discs.ts";
import { counted } from "../../speech/english/counts.ts";
import { pairTerm } from "../../terms/make.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, type Line, lineOf, pairsOf } from "../line.ts";
import { canKeepApart } from "../reachable.ts";

const areNotConsecutive = (first: number, second: number): boolean => Math.abs(first - second) !== 1;

export const nabner: Kind<PathBody, Line> = {
  name: "nabner",
  body: paths({ least: 1 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    const domains = domainsIn(setting, line);
    if (canKeepApart(domains, setting.spend)) return line;
    const right = `cells that can hold ${counted(places.length)} digits two or more apart; these have ${domainsText(domains)}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: ({ cells }) => [
    { cells, different: true },
    ...pairsOf(cells).map((pair) => holding(pair, areNotConsecutive)),
  ],
  terms: ({ id, cells }) => [
    { term: "different", owner: id, cells },
    ...pairsOf(cells).map((pair) => pairTerm(id, pair, areNotConsecutive)),
  ],
  marks: ({ points }) => looseDots(points),
  words: ({ cells }) => ({
    rule: "No digit repeats on a nabner line, and no two digits on it are consecutive. That goes for all its cells, not just for neighbours.",
    title: "Nabner lines",
    noun: "nabner line",
    plural: "nabner lines",
    at: endsOf(cells),
    holds: "are neither equal nor consecutive",
  }),
  alsoSaid: ["nabner"],
  relabels: "mirror",
};
