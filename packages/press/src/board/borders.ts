import type { Draft, Grid, Place } from "@solvewright/engine";
import type { Segment } from "./segments.ts";

const range = (size: number): number[] => Array.from({ length: size }, (_, k) => k);

const covers = ({ row, column, size }: Grid, place: Place): boolean =>
  place.row >= row && place.row < row + size && place.column >= column && place.column < column + size;

/** The letter of the region that a place of this grid lies in; one for all where it has no regions. */
const regionAt = ({ row, column, size, regions }: Grid, place: Place): string =>
  regions?.[(place.row - row) * size + place.column - column] ?? "";

/** One side of a cell: what lies on both sides of it, and the line itself. */
export interface Side {
  readonly inner: Place;
  readonly outer: Place;
  readonly line: Segment;
}

const below = (place: Place): Side => ({
  inner: place,
  outer: { row: place.row + 1, column: place.column },
  line: [
    [place.column - 1, place.row],
    [place.column, place.row],
  ],
});
const right = (place: Place): Side => ({
  inner: place,
  outer: { row: place.row, column: place.column + 1 },
  line: [
    [place.column, place.row - 1],
    [place.column, place.row],
  ],
});

/** The sides between two cells of the canvas, whatever grids they lie in. */
export const sidesBetween = ({ canvas }: Draft): Side[] => {
  const known = new Set(canvas.names);
  return canvas.places
    .flatMap((place) => [below(place), right(place)])
    .filter(({ outer }) => known.has(`r${outer.row}c${outer.column}`));
};

/** A grid's edge, side by side clockwise from its top left corner. */
export const edgeOf = ({ row, column, size }: Grid): Side[] => {
  const [left, top, far, foot] = [column - 1, row - 1, column - 1 + size, row - 1 + size];
  const ahead = range(size);
  const back = [...ahead].reverse();
  const side = (r: number, c: number, down: number, along: number, line: Segment): Side => ({
    inner: { row: row + r, column: column + c },
    outer: { row: row + r + down, column: column + c + along },
    line,
  });
  return [
    ...ahead.map((k) =>
      side(0, k, -1, 0, [
        [left + k, top],
        [left + k + 1, top],
      ]),
    ),
    ...ahead.map((k) =>
      side(k, size - 1, 0, 1, [
        [far, top + k],
        [far, top + k + 1],
      ]),
    ),
    ...back.map((k) =>
      side(size - 1, k, 1, 0, [
        [left + k + 1, foot],
        [left + k, foot],
      ]),
    ),
    ...back.map((k) =>
      side(k, 0, 0, -1, [
        [left, top + k + 1],
        [left, top + k],
      ]),
    ),
  ];
};

/** The grids among these that hold both sides of it. */
export const gridsAcross = (grids: readonly Grid[], { inner, outer }: Side): Grid[] =>
  grids.filter((grid) => covers(grid, inner) && covers(grid, outer));

/** Whether it parts two regions of this grid, which holds both sides. */
export const isBorder = (grid: Grid, { inner, outer }: Side): boolean =>
  regionAt(grid, inner) !== regionAt(grid, outer);
