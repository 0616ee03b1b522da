import { betweenCircles } from "../../marks/ended.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind } from "../contract.ts";
import { canMeetEnds, type EndsRule, readingEndsFirst } from "../ends-first.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, innerOf, type Line, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";

const rule: EndsRule = {
  ends: () => true,
  between: (digit, first, last) => (first < digit && digit < last) || (last < digit && digit < first),
};

export const betweenLine: Kind<PathBody, Line> = {
  name: "between-line",
  body: paths({ least: 3 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    if (canMeetEnds(line.cells, rule, setting)) return line;
    const right = `cells that can hold digits between those of the ends; these have ${domainsText(domainsIn(setting, line))}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: ({ cells }) =>
    innerOf(cells).map((cell) => ({
      cells: [cells[0]!, cell, cells.at(-1)!],
      holds: ([first, digit, last]) => rule.between(digit!, first!, last!),
    })),
  terms: ({ id, cells }) => [{ term: "automaton", owner: id, ...readingEndsFirst(cells, rule) }],
  marks: ({ points }) => betweenCircles(points),
  words: ({ cells }) => ({
    rule: "Digits on a line between two circles are greater than one circled digit and less than the other.",
    title: "Between lines",
    noun: "between line",
    plural: "between lines",
    at: endsOf(cells),
    holds: "lie between the digits in the circles",
  }),
  alsoSaid: ["between"],
  readings: [mayNotRepeat("digits on a between line don't repeat", ({ cells }) => cells)],
  relabels: "mirror",
};
