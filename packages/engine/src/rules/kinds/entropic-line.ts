import { count, type Digits, digitsOf, max, min } from "../../board/digits.ts";
import { withThreeStrokes } from "../../marks/crossed.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { type Faulty, faulty, type Kind, type Setting } from "../contract.ts";
import { canTakeTurns, type InTurn, inTurn, inTurnTerms } from "../in-turn.ts";
import { digitsSaid, domainsText } from "../in-words.ts";
import { endsOf, type Line, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";

const thirdsOf = (digits: readonly number[]): Digits[] => {
  const third = digits.length / 3;
  return [0, 1, 2].map((part) => digitsOf(digits.slice(part * third, (part + 1) * third)));
};

/** The low, middle and high digits of the grid that holds the line, or why there are none. */
const partsOf = ({ cells: places }: PathBody, { cells }: Line, { canvas, grids }: Setting): Digits[] | Faulty => {
  const holding = grids.filter((_, grid) => cells.every((cell) => canvas.grids[cell]!.includes(grid)));
  const fitting = holding.filter(({ digits }) => digits.length % 3 === 0);
  const cuts = new Map(fitting.map(({ digits }) => [digits.join(), thirdsOf(digits)]));
  const [parts] = cuts.values();
  if (parts && cuts.size === 1) return parts;
  const right = parts
    ? "a line inside one grid alone; here the grids cut their digits differently"
    : "a line inside a grid whose digits can be cut in three";
  return faulty({ at: ["cells"], read: writePath(places), right });
};

/** A long part by its ends, whatever is missing between them: the digits of the other parts lie outside. */
const partSaid = (digits: Digits): string =>
  count(digits) > 3 ? `${min(digits)} to ${max(digits)}` : digitsSaid(digits);

export const entropicLine: Kind<PathBody, InTurn> = {
  name: "entropic-line",
  body: paths({ least: 3 }),
  resolve: (body, setting) => {
    const line = lineOf(body.cells, setting);
    const classes = partsOf(body, line, setting);
    if ("faults" in classes) return classes;
    if (canTakeTurns({ ...line, classes }, setting)) return { ...line, classes };
    const right = `cells that can hold a low, a middle and a high digit in turn; these have ${domainsText(domainsIn(setting, line))}`;
    return faulty({ at: ["cells"], read: writePath(body.cells), right });
  },
  scopes: inTurn,
  terms: inTurnTerms,
  marks: ({ points }) => withThreeStrokes(points),
  words: ({ cells, classes }) => {
    const [low, middle, high] = classes.map(partSaid);
    return {
      rule: `Any three cells in a row on an entropic line hold a low, a middle and a high digit. Low is ${low}, middle is ${middle} and high is ${high}.`,
      title: "Entropic lines",
      noun: "entropic line",
      plural: "entropic lines",
      at: endsOf(cells),
      holds: "take turns between low, middle and high",
    };
  },
  alsoSaid: ["entrop", "low ... middle", "low ... medium"],
  readings: [mayNotRepeat("digits on an entropic line don't repeat", ({ cells }) => cells)],
  relabels: "mirror",
};
