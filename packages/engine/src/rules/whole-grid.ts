import { remembered } from "../board/remembered.ts";
import { type Canvas, type Cell, cellAt, pairsApart } from "../puzzle/canvas.ts";
import type { Grid } from "../puzzle/puzzle.ts";
import { listed } from "../speech/english/counts.ts";
import type { WholeGridBody } from "./bodies/whole-grid.ts";
import { cellsIn, gridsNamed } from "./cells.ts";
import { type Bound, type EdgeMark, type Faulty, faulty, type Scope, type Setting } from "./contract.ts";

type Pair = readonly [Cell, Cell];

/** A rule that binds every two cells of its grids together that lie in some way to each other. */
export interface Everywhere extends Bound {
  readonly pairs: readonly Pair[];
  /** Where it holds, to begin a sentence with; empty where that goes without saying. */
  readonly where: string;
}

export const sides = [
  [0, 1],
  [1, 0],
] as const;

/** "In the north grid", `everywhere` where it holds in all of several grids, or nothing where there is but one. */
export const whereOf = (all: readonly Grid[], some: readonly Grid[], everywhere: string): string => {
  if (all.length === 1) return "";
  return all.length === some.length ? everywhere : `In ${listed(some.map(({ called }) => called))}`;
};

/** "every digit", or "every digit of its grid" where there are several. */
export const everyDigit = ({ grids }: Pick<Setting, "grids">): string =>
  grids.length > 1 ? "every digit of its grid" : "every digit";

/** The sentence with the place where it holds before it. */
export const placed = (where: string, sentence: string): string =>
  where === "" ? sentence : `${where}, ${sentence[0]!.toLowerCase()}${sentence.slice(1)}`;

type Steps = readonly (readonly [number, number])[];
const pairsBy = remembered((steps: Steps) => remembered((canvas: Canvas) => pairsApart(canvas, steps)));

/** Every two cells of the named grids together that are one of these steps down and right apart. */
export const everywhere = ({ grids: ids }: WholeGridBody, setting: Setting, steps: Steps): Everywhere | Faulty => {
  const grids = gridsNamed(setting, ids);
  if ("faults" in grids) return grids;
  const inside = new Set(cellsIn(setting, grids));
  const pairs = pairsBy(steps)(setting.canvas).filter((pair) => pair.every((cell) => inside.has(cell)));
  return { cells: [], pairs, where: whereOf(setting.grids, grids, "Anywhere on the board") };
};

/** Every two cells of the named grids together that share a side and bear no such mark. */
export const withoutMark = (body: WholeGridBody, setting: Setting, mark: EdgeMark): Everywhere | Faulty => {
  const all = everywhere(body, setting, sides);
  if ("faults" in all) return all;
  const marked = new Set(setting.marked(mark).map(([a, b]) => `${Math.min(a, b)} ${Math.max(a, b)}`));
  return { ...all, pairs: all.pairs.filter(([a, b]) => !marked.has(`${a} ${b}`)) };
};

/** Groups of cells that each hold no digit twice, in each grid for itself. */
export interface Groups extends Bound {
  readonly groups: readonly Extract<Scope, { different: true }>[];
  readonly where: string;
}

/** The grids named, or all that fit; a fault where none does, or a named one does not. `form` says what fits. */
export const fittingGrids = (
  { grids: ids }: WholeGridBody,
  setting: Setting,
  fits: (grid: Grid) => boolean,
  form: string,
): readonly Grid[] | Faulty => {
  const grids = gridsNamed(setting, ids);
  if ("faults" in grids) return grids;
  const unfit = grids.filter((grid) => !fits(grid));
  if (ids && unfit.length > 0)
    return faulty(...unfit.map(({ id }) => ({ at: ["grids", ids.indexOf(id)], read: id, right: `the id of ${form}` })));
  return unfit.length < grids.length
    ? grids.filter(fits)
    : faulty({ read: "no grid that fits", right: `${form} in the file` });
};

/** The cell of a grid by its row and column there, from 0. */
export const cellIn = (setting: Setting, grid: Grid, row: number, column: number): Cell =>
  cellAt(setting.canvas, { row: grid.row + row, column: grid.column + column })!;

/** From 0 up to below the number. */
export const upTo = (below: number): number[] => Array.from({ length: below }, (_, k) => k);
