import { centre } from "../marks/points.ts";
import type { Point } from "../marks/shape.ts";
import type { Cell, Place } from "../puzzle/canvas.ts";
import type { Grid } from "../puzzle/puzzle.ts";
import { gridLineOf, type OutsideBody } from "./bodies/outside.ts";
import type { GridLine, Side } from "./body.ts";
import { cellsAt } from "./cells.ts";
import { type Faulty, faulty, type Setting } from "./contract.ts";

/** A row or a column of a grid as an outside clue sees it. */
export interface OutsideLine {
  readonly grid: Grid;
  readonly axis: "row" | "column";
  /** Counted in the grid from 1. */
  readonly number: number;
  /** The house's id: `GRID/row/3`. */
  readonly house: string;
  /** The side that it is seen from; left or top where the clue has none. */
  readonly from: Side;
  /** Nearest first. */
  readonly cells: readonly Cell[];
  readonly places: readonly Place[];
  /** Where the clue stands: .45 from the edge, in the middle of the line. */
  readonly outsideAt: Point;
  /** One step into the grid. */
  readonly along: Point;
  /** How many cells deep a box is from there, where the grid has boxes. */
  readonly boxDepth?: number;
}

const fits = (grid: Grid, { number }: GridLine): boolean => number <= grid.size;

/** The grid that a line lies in: the one named, else the only one that has such a line. */
export const gridOfLine = (line: GridLine, grids: readonly Grid[]): Grid | Faulty => {
  const { axis, number } = line;
  const named = grids.find(({ id }) => id === line.grid);
  const ids = grids.map(({ id }) => id).join(", ");
  if (line.grid !== undefined && !named)
    return faulty({ at: ["grid"], read: line.grid, right: `the id of a grid: ${ids}` });
  const [grid, another] = (named ? [named] : grids).filter((some) => fits(some, line));
  const whose = (named ?? (grids.length === 1 ? grids[0] : undefined))?.called ?? "a grid";
  const most = Math.max(...(named ? [named] : grids).map(({ size }) => size));
  if (!grid) return faulty({ at: [axis], read: `${number}`, right: `a ${axis} of ${whose}, 1 to ${most}` });
  return another
    ? faulty({
        read: `${axis} ${number}`,
        right: `the grid as well, such as grid: ${grid.id}; several have such a ${axis}`,
      })
    : grid;
};

const defaultSide = { row: "left", column: "top" } as const;
const steps: Readonly<Record<Side, Point>> = { left: [1, 0], right: [-1, 0], top: [0, 1], bottom: [0, -1] };

/** The line that the body names, or why there is none. */
export const lineOf = (body: OutsideBody, setting: Pick<Setting, "canvas" | "grids">): OutsideLine | Faulty => {
  const line = gridLineOf(body);
  const { axis, number, from = defaultSide[axis] } = line;
  const grid = gridOfLine(line, setting.grids);
  if ("faults" in grid) return grid;
  const [x, y] = steps[from];
  const first = (step: number, at: number): number =>
    step === 0 ? at + number - 1 : step > 0 ? at : at + grid.size - 1;
  const [row, column] = [first(y, grid.row), first(x, grid.column)];
  const places = Array.from({ length: grid.size }, (_, k) => ({ row: row + y * k, column: column + x * k }));
  const [atX, atY] = centre(places[0]!);
  const depth = grid.box && (axis === "row" ? grid.box.columns : grid.box.rows);
  return {
    grid,
    axis,
    number,
    house: `${grid.id}/${axis}/${number}`,
    from,
    cells: cellsAt(setting, places),
    places,
    outsideAt: [atX - 0.95 * x, atY - 0.95 * y],
    along: [x, y],
    ...(depth ? { boxDepth: depth } : {}),
  };
};
