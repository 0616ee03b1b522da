import { digitsOf } from "../../board/digits.ts";
import { ruledAcross } from "../../marks/fills.ts";
import type { Place } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import { cellsAt } from "../cells.ts";
import type { Kind } from "../contract.ts";
import { everyDigit, fittingGrids, type Groups, placed, upTo, whereOf } from "../whole-grid.ts";

interface Windows extends Groups {
  /** "every digit", and whose. */
  readonly every: string;
  readonly panes: readonly (readonly Place[])[];
}

const corners = [
  [1, 1],
  [1, 5],
  [5, 1],
  [5, 5],
] as const;

const panesOf = (grid: Grid): Place[][] =>
  corners.map(([down, right]) =>
    upTo(9).map((k) => ({ row: grid.row + down + Math.floor(k / 3), column: grid.column + right + (k % 3) })),
  );

export const windows: Kind<WholeGridBody, Windows> = {
  name: "windows",
  body: wholeGrid,
  wholeGrid: true,
  resolve: (body, setting) => {
    const grids = fittingGrids(body, setting, ({ size }) => size === 9, "a grid of nine rows");
    if ("faults" in grids) return grids;
    const groups = grids.flatMap((grid) =>
      panesOf(grid).map((pane, k): Groups["groups"][number] => ({
        cells: cellsAt(setting, pane),
        different: true,
        digits: digitsOf(grid.digits),
        house: `${grid.id}/window/${"abcd"[k]}`,
      })),
    );
    const where = whereOf(setting.grids, grids, "");
    return { cells: [], groups, panes: grids.flatMap(panesOf), every: everyDigit(setting), where };
  },
  scopes: ({ groups }) => groups,
  terms: ({ id, groups }) =>
    groups.map(({ cells, digits }) => ({ term: "different", owner: id, cells, ...(digits ? { digits } : {}) })),
  marks: ({ panes }) => panes.flatMap(ruledAcross),
  words: ({ where, every }) => ({
    rule: `${placed(where, `Each marked window holds ${every} once`)}.`,
    title: "Windows",
    noun: "window",
    plural: "windows",
    at: [],
    holds: "lie in one window, so they differ",
  }),
  alsoSaid: ["window", "hyper"],
  relabels: "any",
};
