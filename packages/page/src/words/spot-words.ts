import { counted } from "@solvewright/engine";
import { type SpotShape, spotHouse } from "../solve/entry.ts";
import { cellIn, type Ground } from "../solve/ground.ts";
import type { Position } from "../solve/position.ts";

/** "box" where the cell's region of that turn is one, else "region"; rows and columns by their own name. */
export const shapeSaid = (ground: Ground, shape: SpotShape): string =>
  shape !== "region" ? shape : ground.data.puzzle.grids.every(({ box }) => box) ? "box" : "region";

/** What the next digit will mean. */
export const armedSaid = (ground: Ground, cell: string, shape: SpotShape, turn: number): string => {
  const house = spotHouse(ground, cell, shape, turn);
  return house ? `Next digit: where ${house.said} can hold it.` : `No ${shapeSaid(ground, shape)} here.`;
};

/** Where a spot mark says that its digit is, as far as the chosen cells show it. */
const amongSaid = (ground: Ground, cells: readonly string[], chosen: readonly string[]): string => {
  const isShown = cells.every((cell) => chosen.includes(cell));
  const [only] = cells as [string, ...string[]];
  if (cells.length > 1) return `one of ${isShown ? "these " : ""}${counted(cells.length)} cells`;
  return isShown && chosen.length === 1 ? "this cell" : cellIn(ground, only).said;
};

/** The spot marks of the chosen cells, each with its house: "The 4 of row 3 of the mill is in one of these two cells." */
export const spotsSaid = (ground: Ground, { spots }: Position, chosen: readonly string[]): string[] =>
  spots
    .filter(({ cells }) => cells.some((cell) => chosen.includes(cell)))
    .map(
      ({ digit, house, cells }) =>
        `The ${digit} of ${ground.houses.get(house)!.said} is in ${amongSaid(ground, cells, chosen)}.`,
    );
