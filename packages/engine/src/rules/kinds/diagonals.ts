import { digitsOf } from "../../board/digits.ts";
import { dashedDiagonals } from "../../marks/diagonals.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { type WholeGridWhichBody, wholeGridWhich } from "../bodies/whole-grid.ts";
import { gridsNamed } from "../cells.ts";
import type { Kind, Setting } from "../contract.ts";
import { cellIn, everyDigit, type Groups, placed, upTo, whereOf } from "../whole-grid.ts";

interface Diagonals extends Groups {
  /** "every digit", and whose. */
  readonly every: string;
  readonly drawn: readonly { readonly grid: Grid; readonly which: "down" | "up" }[];
}

const diagonal = (setting: Setting, grid: Grid, which: "down" | "up"): Groups["groups"][number] => ({
  cells: upTo(grid.size).map((row) => cellIn(setting, grid, row, which === "down" ? row : grid.size - 1 - row)),
  different: true,
  digits: digitsOf(grid.digits),
  house: `${grid.id}/diagonal/${which}`,
});

export const diagonals: Kind<WholeGridWhichBody, Diagonals> = {
  name: "diagonals",
  body: wholeGridWhich,
  wholeGrid: true,
  resolve: ({ grids: ids, which = "both" }, setting) => {
    const grids = gridsNamed(setting, ids);
    if ("faults" in grids) return grids;
    const drawn = grids.flatMap((grid) =>
      (["down", "up"] as const).flatMap((way) => (which === way || which === "both" ? [{ grid, which: way }] : [])),
    );
    const groups = drawn.map((line) => diagonal(setting, line.grid, line.which));
    return { cells: [], groups, drawn, every: everyDigit(setting), where: whereOf(setting.grids, grids, "") };
  },
  scopes: ({ groups }) => groups,
  terms: ({ id, groups }) =>
    groups.map(({ cells, digits }) => ({ term: "different", owner: id, cells, ...(digits ? { digits } : {}) })),
  marks: ({ drawn }) => drawn.flatMap(({ grid, which }) => dashedDiagonals(grid, which)),
  words: ({ where, groups, every }) => ({
    rule: `${placed(where, `${groups.length === 1 ? "The" : "Each"} marked diagonal holds ${every} once`)}.`,
    title: groups.length === 1 ? "The diagonal" : "Diagonals",
    noun: "diagonal",
    plural: "diagonals",
    at: [],
    holds: "lie on one diagonal, so they differ",
  }),
  relabels: "any",
};
