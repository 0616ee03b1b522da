import { type Digits, has } from "../../board/digits.ts";
import { looseDots } from "../../marks/discs.ts";
import { pairTerm } from "../../terms/make.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { domainsText, inWords } from "../in-words.ts";
import { endsOf, type Line, lineOf, pairsOf } from "../line.ts";

const areNotConsecutive = (first: number, second: number): boolean => Math.abs(first - second) !== 1;

/**
 * Whether the cells can hold digits no two of which are equal or consecutive: digit by digit, over how many cells that
 * can hold the same digits are still free, and whether the digit before was taken.
 */
const canKeepApart = (domains: readonly Digits[]): boolean => {
  const sorts = [...new Set(domains)];
  const all = sorts.map((sort) => domains.filter((domain) => domain === sort).length);
  let ways = new Map([["", { free: all, taken: false }]]);
  for (let digit = 0; digit < 32; digit++) {
    const further: typeof ways = new Map();
    for (const { free, taken } of ways.values()) {
      further.set(`${free}`, { free, taken: false });
      for (const [k, sort] of sorts.entries())
        if (!taken && free[k]! > 0 && has(sort, digit)) {
          const less = free.with(k, free[k]! - 1);
          further.set(`${less} taken`, { free: less, taken: true });
        }
    }
    ways = further;
  }
  return [...ways.values()].some(({ free }) => free.every((count) => count === 0));
};

export const nabner: Kind<PathBody, Line> = {
  name: "nabner",
  body: paths({ least: 1 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    const domains = domainsIn(setting, line);
    if (canKeepApart(domains)) return line;
    const right = `cells that can hold ${inWords(places.length)} digits two or more apart; these have ${domainsText(domains)}`;
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
  relabels: "mirror",
};
