import { type Canvas, cellAt, nameOf, type Place } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Random } from "../../random.ts";
import type { BodyShape, FaultInText, Ground } from "../body.ts";
import type { Body, Fault } from "../contract.ts";
import { path, whole } from "./fields.ts";
import { writePath } from "./path-text.ts";
import { shapeOf } from "./shape.ts";

/** A run of two or more cells along a diagonal, and what they add up to. */
export interface DiagonalBody extends Body {
  readonly cells: readonly Place[];
  readonly sum: number;
}

const stepOf = (a: Place, b: Place): readonly [number, number] => [b.row - a.row, b.column - a.column];

const bend = ({ cells: [first, second, ...rest] }: DiagonalBody): FaultInText[] => {
  const [down, right] = stepOf(first!, second!);
  const isStraight = rest.every((cell, k) => stepOf([second!, ...rest][k]!, cell).join() === `${down},${right}`);
  if (Math.abs(down) === 1 && Math.abs(right) === 1 && isStraight) return [];
  return [
    {
      at: ["cells"],
      read: writePath([first!, second!, ...rest]),
      right: "a run of cells along one diagonal, such as r1c2-r3c4",
    },
  ];
};

const isInside = ({ row, column, size }: Grid, cell: Place): boolean =>
  cell.row >= row && cell.row < row + size && cell.column >= column && cell.column < column + size;
const beyond = (a: Place, b: Place): Place => ({ row: 2 * b.row - a.row, column: 2 * b.column - a.column });

/** Whether the run leaves, at both ends, some grid that holds all of it. */
const runsThrough = ({ cells }: DiagonalBody, { grids }: { readonly grids: readonly Grid[] }): boolean => {
  const ends = [beyond(cells[1]!, cells[0]!), beyond(cells.at(-2)!, cells.at(-1)!)];
  return grids.some((grid) => cells.every((cell) => isInside(grid, cell)) && !ends.some((end) => isInside(grid, end)));
};
const leavesCanvas = ({ cells }: DiagonalBody, canvas: Canvas): boolean =>
  cellAt(canvas, beyond(cells[1]!, cells[0]!)) === undefined &&
  cellAt(canvas, beyond(cells.at(-2)!, cells.at(-1)!)) === undefined;

const sum = whole();

/** A diagonal from edge to edge of the ground, from a cell of its first or its last column. */
const draw = (random: Random, ground: Ground): DiagonalBody | undefined => {
  const { rows, columns } = ground.canvas;
  const [row, down, isFirst] = [1 + random.below(rows), random.pick([1, -1]), random.below(2) === 0];
  const places = Array.from({ length: columns }, (_, k) => ({
    row: row + down * k,
    column: isFirst ? 1 + k : columns - k,
  }));
  const cells = places.filter((place) => cellAt(ground.canvas, place) !== undefined);
  return cells.length < 2 ? undefined : { cells, sum: sum.draw!(random, ground)! };
};

export const diagonal: BodyShape<DiagonalBody> = shapeOf({
  name: "diagonal",
  form: "{ cells, sum }, or a list of them; the cells run along a diagonal",
  gesture: "margin",
  fields: { cells: path({ least: 2 }), sum },
  draw,
  check: bend,
  remarks: (body, setting): Fault[] => {
    if (runsThrough(body, setting) || leavesCanvas(body, setting.canvas)) return [];
    const read = `${nameOf(body.cells[0]!)} to ${nameOf(body.cells.at(-1)!)}`;
    return [
      { at: ["cells"], read, right: "a diagonal that runs from edge to edge of a grid; this one is read as it stands" },
    ];
  },
});
