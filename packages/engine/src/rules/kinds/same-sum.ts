import { areaLabel, dottedBorder } from "../../marks/border.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import { type Area, areaAt, domainsIn } from "../area.ts";
import { becauseOfBalance, othersThat, type Side } from "../because/balance.ts";
import { type AreasBody, areas as areasBody } from "../bodies/areas.ts";
import { writePath } from "../bodies/path-text.ts";
import { type Bound, type Fault, faulty, type Kind, type Setting } from "../contract.ts";
import { haveCommon } from "../in-balance.ts";
import { sumsOf } from "../reachable.ts";
import { allCells, letterFromSecond, sameCells, withFirst } from "../several-areas.ts";
import { apart, asMuchAs, asMuchAsTerm } from "../sums.ts";

interface SameSum extends Bound {
  readonly areas: readonly Area[];
  /** The cells of the first area with those of each other. */
  readonly sides: readonly (readonly [readonly Cell[], readonly Cell[]])[];
}

/** "3 to 7". */
const rangeOf = (sums: readonly number[]): string =>
  sums.length === 1 ? `${sums[0]}` : `${sums[0]} to ${sums.at(-1)}`;

const withoutCommonSum = (areas: readonly Area[], setting: Setting): Fault[] =>
  areas.slice(1).flatMap((area, k) => {
    const sides = apart(areas[0]!.cells, area.cells);
    const [first, other] = sides.map((cells) => sumsOf(domainsIn(setting, { cells })));
    if (haveCommon([first!, other!])) return [];
    const aside = sides[1].length < area.cells.length ? ", shared cells left aside" : "";
    const right = `an area that can add up to as much as the first: ${rangeOf(other!)} here, ${rangeOf(first!)} there${aside}`;
    return [{ at: ["areas", k + 1], read: writePath(area.places), right }];
  });

/** Where no cell lies in two areas, one sum must serve them all. */
const withoutSumOfAll = (areas: readonly Area[], setting: Setting): Fault[] => {
  const sums = areas.map((area) => sumsOf(domainsIn(setting, area)));
  const isShared = allCells(areas.map(({ cells }) => cells)).length < areas.flatMap(({ cells }) => cells).length;
  if (isShared || haveCommon(sums)) return [];
  return [
    {
      at: ["areas"],
      read: areas.map(({ places }) => writePath(places)).join(", "),
      right: "areas that can all have one sum",
    },
  ];
};

export const sameSum: Kind<AreasBody, SameSum> = {
  name: "same-sum",
  body: areasBody,
  resolve: ({ areas: written, tint }, setting) => {
    const areas = written.map((places) => areaAt(places, tint, setting));
    const cells = areas.map((area) => area.cells);
    const twice = sameCells(cells, written);
    if (twice.length > 0) return faulty(...twice);
    const pairwise = withoutCommonSum(areas, setting);
    const faults = pairwise.length > 0 ? pairwise : withoutSumOfAll(areas, setting);
    return faults.length > 0 ? faulty(...faults) : { cells: allCells(cells), areas, sides: withFirst(cells) };
  },
  scopes: ({ sides }) => sides.map(([first, other]) => asMuchAs(first, other)),
  terms: ({ id, sides }) => sides.map(([first, other]) => asMuchAsTerm(id, first, other)),
  marks: ({ id, areas }) =>
    areas.flatMap((area) => [...dottedBorder(area), areaLabel(area, `=${letterFromSecond(id)}`)]),
  words: ({ id, cells, areas }) => ({
    rule: "Areas with the same equals sign have the same sum. Digits may repeat where rows, columns and regions let them.",
    title: "Equal sums",
    noun: areas.length === 2 ? "pair of equal sums" : "set of equal sums",
    plural: areas.length === 2 ? "pairs of equal sums" : "sets of equal sums",
    ...(letterFromSecond(id) === "" ? {} : { called: `equal sums lettered ${letterFromSecond(id)}` }),
    at: cells,
    holds: `add up to the same in the ${counted(areas.length)} areas`,
  }),
  because: ({ sides }, asked) => {
    const sideOf = (cells: readonly Cell[]): Side => ({
      cells,
      makes: cells.length === 1 ? "the other area is" : "the other area makes",
      rest: othersThat("in its own area"),
    });
    return becauseOfBalance(
      sides.map(([first, other]) => [sideOf(first), sideOf(other)] as const),
      asked,
    );
  },
  alsoSaid: ["same sum", "equal sum", "same total"],
  relabels: "none",
};
