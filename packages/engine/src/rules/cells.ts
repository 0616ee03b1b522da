import { both, type Digits, digitsOf, none } from "../board/digits.ts";
import { type Cell, cellAt, nameOf, type Place } from "../puzzle/canvas.ts";
import type { Grid } from "../puzzle/puzzle.ts";
import { type Faulty, faulty, type Setting } from "./contract.ts";

/** The cells at these places; reading has seen to it that they are on the canvas. */
export const cellsAt = ({ canvas }: Pick<Setting, "canvas">, places: readonly Place[]): Cell[] =>
  places.map((place) => {
    const cell = cellAt(canvas, place);
    if (cell === undefined) throw new Error(`${nameOf(place)} is off the canvas`);
    return cell;
  });

/** The digits that all grids of each cell allow, by `Cell`. */
export const domainsOf = (setting: Pick<Setting, "canvas" | "grids">): Digits[] => {
  const digits = setting.grids.map((grid) => digitsOf(grid.digits));
  return setting.canvas.grids.map((grids) => grids.map((grid) => digits[grid]!).reduce<Digits>(both, -1 as Digits));
};

/** The union of what the cells can hold. */
export const digitsIn = ({ domains }: Pick<Setting, "domains">, cells: readonly Cell[]): Digits =>
  cells.reduce<Digits>((all, cell) => (all | domains[cell]!) as Digits, none);

/** The grids that a whole-grid rule names (all where it names none), or what is wrong with a name. */
export const gridsNamed = (
  { grids }: Pick<Setting, "grids">,
  ids: readonly string[] | undefined,
): readonly Grid[] | Faulty => {
  if (!ids) return grids;
  const unknown = ids.flatMap((id, k) =>
    grids.some((grid) => grid.id === id)
      ? []
      : [{ at: ["grids", k], read: id, right: `the id of a grid: ${grids.map((grid) => grid.id).join(", ")}` }],
  );
  return unknown.length > 0 ? faulty(...unknown) : grids.filter((grid) => ids.includes(grid.id));
};

/** The cells that lie in one of these grids. */
export const cellsIn = ({ canvas, grids }: Pick<Setting, "canvas" | "grids">, some: readonly Grid[]): Cell[] =>
  canvas.grids.flatMap((under, cell) => (under.some((grid) => some.includes(grids[grid]!)) ? [cell] : []));
