import { digitsOf } from "../../board/digits.ts";
import { boxesSign } from "../../marks/signs.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind, Setting } from "../contract.ts";
import { cellIn, fittingGrids, type Groups, placed, upTo, whereOf } from "../whole-grid.ts";

/** The cells in each place of their boxes; there are as many boxes as digits. */
const groupsOf = (setting: Setting, grid: Grid): Groups["groups"] => {
  const { rows, columns } = grid.box!;
  return upTo(rows * columns).map((place) => ({
    cells: upTo(grid.size ** 2)
      .map((k) => [Math.floor(k / grid.size), k % grid.size] as const)
      .filter(([row, column]) => (row % rows) * columns + (column % columns) === place)
      .map(([row, column]) => cellIn(setting, grid, row, column)),
    different: true,
    digits: digitsOf(grid.digits),
  }));
};

export const disjointGroups: Kind<WholeGridBody, Groups> = {
  name: "disjoint-groups",
  body: wholeGrid,
  wholeGrid: true,
  resolve: (body, setting) => {
    const grids = fittingGrids(body, setting, ({ box }) => box !== undefined, "a grid whose regions are boxes");
    if ("faults" in grids) return grids;
    const groups = grids.flatMap((grid) => groupsOf(setting, grid));
    return { cells: [], groups, where: whereOf(setting.grids, grids, "In each grid for itself") };
  },
  scopes: ({ groups }) => groups,
  terms: ({ id, groups }) =>
    groups.map(({ cells, digits }) => ({ term: "different", owner: id, cells, ...(digits ? { digits } : {}) })),
  marks: () => boxesSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "Cells in the same place of their boxes hold different digits")}.`,
    title: "Disjoint groups",
    noun: "disjoint group",
    plural: "disjoint groups",
    at: [],
    holds: "have the same place in their boxes, so they differ",
  }),
  alsoSaid: ["disjoint", "same position", "same place", "same relative"],
  relabels: "any",
};
