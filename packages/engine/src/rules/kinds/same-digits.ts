import { both, digitsOf, isEmpty, listOf } from "../../board/digits.ts";
import { areaLabel, dottedBorder } from "../../marks/border.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import { matchingOf } from "../../terms/matching.ts";
import { type Area, areaAt } from "../area.ts";
import { type AreasBody, areas as areasBody } from "../bodies/areas.ts";
import { writePath } from "../bodies/path-text.ts";
import { digitsIn } from "../cells.ts";
import { type Bound, type Fault, faulty, type Kind, type Scope, type Setting } from "../contract.ts";
import { allCells, letterFromSecond, sameCells, unequalSizes, withFirst } from "../several-areas.ts";
import { apart } from "../sums.ts";

interface SameDigits extends Bound {
  readonly areas: readonly Area[];
  readonly digits: readonly number[];
  /** Of the first area with each other: the cells that the two don't share. */
  readonly sides: readonly (readonly [readonly Cell[], readonly Cell[]])[];
}

/** The digit stands as often in the first cells as in the others. */
const asOften = (digit: number, [first, other]: readonly [readonly Cell[], readonly Cell[]]): Scope => ({
  cells: [...first, ...other],
  start: 0,
  next: (lead, read, index) => (lead as number) + (read === digit ? (index < first.length ? 1 : -1) : 0),
  ok: (lead) => lead === 0,
});

/** Whether each cell of one side has a cell of the other with which it can share a digit. Up to 32 cells a side. */
const canMatch = ([first, other]: readonly [readonly Cell[], readonly Cell[]], { domains }: Setting): boolean => {
  if (first.length > 32) return true;
  const matching = matchingOf(first.length);
  for (const [k, cell] of first.entries())
    matching.options[k] = digitsOf(
      other.flatMap((like, j) => (isEmpty(both(domains[cell]!, domains[like]!)) ? [] : [j])),
    );
  return matching.run();
};

export const sameDigits: Kind<AreasBody, SameDigits> = {
  name: "same-digits",
  body: areasBody,
  resolve: ({ areas: written, tint }, setting) => {
    const areas = written.map((places) => areaAt(places, tint, setting));
    const cells = areas.map((area) => area.cells);
    const faults = [...unequalSizes(written), ...sameCells(cells, written)];
    if (faults.length > 0) return faulty(...faults);
    const sides = withFirst(cells).map(([first, other]) => apart(first, other));
    const unmatched = sides.flatMap((side, k): Fault[] =>
      canMatch(side, setting)
        ? []
        : [
            {
              at: ["areas", k + 1],
              read: writePath(written[k + 1]!),
              right: "an area that can hold the digits of the first",
            },
          ],
    );
    if (unmatched.length > 0) return faulty(...unmatched);
    return { cells: allCells(cells), areas, digits: listOf(digitsIn(setting, allCells(cells))), sides };
  },
  scopes: ({ digits, sides }) => sides.flatMap((side) => digits.map((digit) => asOften(digit, side))),
  terms: ({ id, sides }) =>
    sides.map(([first, other]) => ({
      term: "same-digits",
      owner: id,
      cells: [...first, ...other],
      half: first.length,
    })),
  marks: ({ id, areas }) =>
    areas.flatMap((area) => [...dottedBorder(area), areaLabel(area, `≡${letterFromSecond(id)}`)]),
  words: ({ id, cells, areas }) => ({
    rule: "Areas with the same three bars hold the same digits, each as often, in any order.",
    title: "Same digits",
    noun: areas.length === 2 ? "pair of matching areas" : "set of matching areas",
    plural: areas.length === 2 ? "pairs of matching areas" : "sets of matching areas",
    ...(letterFromSecond(id) === "" ? {} : { called: `matching areas lettered ${letterFromSecond(id)}` }),
    at: cells,
    holds: `are the same digits in the ${counted(areas.length)} areas`,
  }),
  alsoSaid: ["same set", "same three"],
  relabels: "any",
};
