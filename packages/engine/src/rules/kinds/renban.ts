import { both, type Digits } from "../../board/digits.ts";
import { beads } from "../../marks/beads.ts";
import { counted } from "../../speech/english/counts.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind, type Scope } from "../contract.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, type Line, lineOf } from "../line.ts";
import { canAllDiffer } from "../reachable.ts";

/** The least and the greatest digit so far are one state: 32 times the least, and the greatest. */
const widened = (state: number, digit: number): number => {
  if (state < 0) return 33 * digit;
  return 32 * Math.min(state >> 5, digit) + Math.max(state & 31, digit);
};

const isRun = (state: number, cells: number): boolean => (state & 31) - (state >> 5) === cells - 1;
const consecutive = ({ cells }: Line): Scope => ({
  cells,
  start: -1,
  next: (state, digit) => widened(state as number, digit),
  ok: (state) => isRun(state as number, cells.length),
});

const canBeRun = (domains: readonly Digits[]): boolean => {
  const run = 2 ** domains.length - 1;
  const starts = Array.from({ length: 33 - domains.length }, (_, start) => (run << start) as Digits);
  return starts.some((digits) => canAllDiffer(domains.map((domain) => both(domain, digits))));
};

export const renban: Kind<PathBody, Line> = {
  name: "renban",
  body: paths({ least: 2 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    const domains = domainsIn(setting, line);
    if (domains.length <= 32 && canBeRun(domains)) return line;
    const right = `cells that can hold ${counted(domains.length)} consecutive digits; these have ${domainsText(domains)}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: (line) => [{ cells: line.cells, different: true }, consecutive(line)],
  terms: ({ id, cells }) => [
    { term: "different", owner: id, cells },
    { term: "run", owner: id, cells },
  ],
  marks: ({ points }) => beads(points),
  words: ({ cells }) => ({
    rule: "A renban line holds consecutive digits, each of them once, in any order.",
    title: "Renban lines",
    noun: "renban line",
    plural: "renban lines",
    at: endsOf(cells),
    holds: "are consecutive in some order",
  }),
  alsoSaid: ["renban", "consecutive"],
  relabels: "mirror",
};
