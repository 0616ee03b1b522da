import { nameOf } from "@solvewright/engine";
import { cellIn, type Ground, type GroundCell } from "./ground.ts";

export type Direction = "left" | "right" | "up" | "down";

const steps: Readonly<Record<Direction, readonly [down: number, right: number]>> = {
  left: [0, -1],
  right: [0, 1],
  up: [-1, 0],
  down: [1, 0],
};

/** How far a cell lies straight that way; undefined where it lies elsewhere. */
const wayTo = (from: GroundCell, to: GroundCell, direction: Direction): number | undefined => {
  const [down, right] = steps[direction];
  const [dy, dx] = [to.place.row - from.place.row, to.place.column - from.place.column];
  const along = dy * down + dx * right;
  return along > 0 && dy * right === 0 && dx * down === 0 ? along : undefined;
};

/** The next cell that way, over gaps; the same one where there is none. */
export const stepped = (ground: Ground, from: string, direction: Direction): string => {
  const ahead = [...ground.cells.values()].flatMap((cell) => {
    const way = wayTo(cellIn(ground, from), cell, direction);
    return way === undefined ? [] : [{ name: cell.name, way }];
  });
  return ahead.sort((a, b) => a.way - b.way)[0]?.name ?? from;
};

/** The first cell of the next grid, the topmost first, or of the one before. */
export const gridAfter = (ground: Ground, from: string, by: 1 | -1): string => {
  const { grids } = ground.data.puzzle;
  const next = (cellIn(ground, from).grids[0]! - by + grids.length) % grids.length;
  const { row, column } = grids[next]!;
  return nameOf({ row, column });
};

/** The first or last cell of the canvas row, or of the whole board. */
export const endOf = (ground: Ground, from: string, end: "first" | "last", all: boolean): string => {
  const { row } = cellIn(ground, from).place;
  const cells = [...ground.cells.values()].filter(({ place }) => all || place.row === row);
  return (end === "first" ? cells[0]! : cells.at(-1)!).name;
};

/** All cells in the rectangle between two. */
export const between = (ground: Ground, a: string, b: string): string[] => {
  const [p, q] = [cellIn(ground, a).place, cellIn(ground, b).place];
  const within = (x: number, y: number, z: number): boolean => Math.min(x, y) <= z && z <= Math.max(x, y);
  return [...ground.cells.values()]
    .filter(({ place }) => within(p.row, q.row, place.row) && within(p.column, q.column, place.column))
    .map(({ name }) => name);
};
