import { listOf } from "../../board/digits.ts";
import { comb } from "../../marks/comb.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Term } from "../../terms/term.ts";
import { domainsIn } from "../area.ts";
import { becauseOfBalance, othersThat, type Side } from "../because/balance.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind, type Scope, type Setting } from "../contract.ts";
import { haveCommon } from "../in-balance.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, type Line, lineOf, mirrored, pairsOf, stepsOf, tiesOf } from "../line.ts";
import { sumsOf } from "../reachable.ts";
import { mayNotRepeat } from "../readings.ts";
import { asMuchAs, asMuchAsTerm } from "../sums.ts";

/** The middle cell, where there is one. */
const middleOf = (cells: readonly Cell[]): readonly Cell[] =>
  cells.length % 2 === 1 ? [cells[(cells.length - 1) / 2]!] : [];

/** Whether the pairs, and the middle cell, can come to one number. */
const canMeet = ({ cells }: Line, { domains }: Setting): boolean => {
  const sums = mirrored(cells).map((pair) => sumsOf(pair.map((cell) => domains[cell]!)));
  const middles = middleOf(cells).map((cell) => listOf(domains[cell]!));
  return haveCommon([...sums, ...middles]);
};

const scopesOf = ({ cells }: Line): Scope[] => {
  const [middle] = middleOf(cells);
  if (middle === undefined) return stepsOf(mirrored(cells)).map(([outer, inner]) => asMuchAs(outer, inner));
  return mirrored(cells).map(([a, b]) => ({ cells: [a, middle, b], holds: ([x, sum, y]) => x! + y! === sum }));
};

const termsOf = (id: string, { cells }: Line): Term[] => {
  const [middle] = middleOf(cells);
  if (middle === undefined) return tiesOf(mirrored(cells)).map(([outer, inner]) => asMuchAsTerm(id, outer, inner));
  return mirrored(cells).map((pair) => asMuchAsTerm(id, pair, [middle]));
};

export const zipperLine: Kind<PathBody, Line> = {
  name: "zipper-line",
  body: paths({ least: 3 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    if (canMeet(line, setting)) return line;
    const what = places.length % 2 === 1 ? "pairs that can add up to the middle digit" : "pairs that can have one sum";
    return faulty({
      at: ["cells"],
      read: writePath(places),
      right: `${what}; the cells have ${domainsText(domainsIn(setting, line))}`,
    });
  },
  scopes: scopesOf,
  terms: (line) => termsOf(line.id, line),
  marks: ({ points }) => comb(points),
  words: ({ cells }) => ({
    rule: "Two digits equally far from the middle of a zipper line always add up to the same number. If a cell is in the middle, its digit is that number.",
    title: "Zipper lines",
    noun: "zipper line",
    plural: "zipper lines",
    at: endsOf(cells),
    holds: "add up to the same, pair by pair from the ends",
  }),
  because: ({ cells }, asked) => {
    const sides = mirrored(cells).map(
      (pair): Side => ({ cells: pair, makes: "another pair makes", rest: othersThat("of its pair") }),
    );
    const middle = middleOf(cells).map(
      (cell): Side => ({ cells: [cell], makes: "the middle is", rest: othersThat("there") }),
    );
    return becauseOfBalance(pairsOf([...middle, ...sides]), asked);
  },
  alsoSaid: ["zipper", "equal distance", "equally far", "equidistant", "same distance"],
  readings: [mayNotRepeat("digits on a zipper line don't repeat", ({ cells }) => cells)],
  relabels: "none",
};
