import { both, type Digits, isEmpty } from "../../board/digits.ts";
import { squaredPaper } from "../../marks/fills.ts";
import type { Cell, Place } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import { type AreasBody, areas as areasBody } from "../bodies/areas.ts";
import { writePath } from "../bodies/path-text.ts";
import { type Bound, type Fault, faulty, type Kind, type Setting } from "../contract.ts";
import { allCells, cellsOfAreas, letterOf, unequalSizes, withFirst } from "../several-areas.ts";

interface Clone extends Bound {
  readonly areas: readonly (readonly Place[])[];
  /** The cells in the same place of the areas, place by place. */
  readonly together: readonly (readonly Cell[])[];
}

/** Cells that are the same digit by any number of areas, where these share cells. */
const merged = (sets: readonly (readonly Cell[])[]): (readonly Cell[])[] => {
  const groups = new Map<Cell, readonly Cell[]>();
  for (const set of sets) {
    const joined = [...new Set(set.flatMap((cell) => groups.get(cell) ?? [cell]))];
    for (const cell of joined) groups.set(cell, joined);
  }
  return [...new Set(groups.values())];
};

const withoutCommonDigit = (together: readonly (readonly Cell[])[], { domains, canvas }: Setting): Fault[] =>
  merged(together)
    .filter((cells) => isEmpty(cells.map((cell) => domains[cell]!).reduce<Digits>(both, -1 as Digits)))
    .map((cells) => ({
      at: ["areas"],
      read: cells.map((cell) => canvas.names[cell]).join(" "),
      right: "cells that can hold the same digit; their grids leave none",
    }));

const isShifted = (from: readonly Place[], to: readonly Place[]): boolean =>
  from.every(
    ({ row, column }, k) =>
      to[k]!.row - row === to[0]!.row - from[0]!.row && to[k]!.column - column === to[0]!.column - from[0]!.column,
  );

export const clone: Kind<AreasBody, Clone> = {
  name: "clone",
  body: areasBody,
  resolve: ({ areas }, setting) => {
    const uneven = unequalSizes(areas);
    if (uneven.length > 0) return faulty(...uneven);
    const cells = cellsOfAreas(areas, setting);
    const together = cells[0]!.map((_, k) => [...new Set(cells.map((area) => area[k]!))]);
    if (together.every((set) => set.length === 1))
      return faulty({ at: ["areas"], read: areas.map(writePath).join(", "), right: "areas of different cells" });
    const apart = withoutCommonDigit(together, setting);
    return apart.length > 0 ? faulty(...apart) : { cells: allCells(cells), areas, together };
  },
  scopes: ({ together }) =>
    together.flatMap(withFirst).map((cells) => ({ cells, holds: ([first, second]) => first === second })),
  terms: ({ id, together }) =>
    together.filter((cells) => cells.length > 1).map((cells) => ({ term: "equal", owner: id, cells })),
  // Areas of one shape match at sight; others need a number a cell.
  marks: ({ id, areas }) => {
    const alike = areas.every((area) => isShifted(areas[0]!, area));
    const label = (k: number): string | undefined =>
      alike ? (k === 0 ? letterOf(id) : undefined) : `${letterOf(id)}${k + 1}`;
    return areas.flatMap((area) => area.flatMap((place, k) => squaredPaper(place, label(k))));
  },
  words: ({ id, cells, areas }) => {
    const noun = areas.length === 2 ? "pair of clones" : "set of clones";
    return {
      rule: "Squared areas with the same letter are clones: they hold the same digits in the same places.",
      title: "Clones",
      noun,
      plural: areas.length === 2 ? "pairs of clones" : "sets of clones",
      called: `${noun} lettered ${letterOf(id)}`,
      at: cells,
      holds: `are the same place by place in the ${counted(areas.length)} areas`,
    };
  },
  relabels: "any",
};
