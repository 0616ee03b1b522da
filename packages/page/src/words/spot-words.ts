import { counted } from "@solvewright/engine";
import { type SpotShape, spotHouse } from "../solve/entry.ts";
import type { Ground } from "../solve/ground.ts";
import type { Position } from "../solve/position.ts";

/** "box" where the cell's region of that turn is one, else "region"; rows and columns by their own name. */
export const shapeSaid = (ground: Ground, shape: SpotShape): string =>
  shape !== "region" ? shape : ground.data.puzzle.grids.every(({ box }) => box) ? "box" : "region";

/** What the next digit will mean. */
export const armedSaid = (ground: Ground, cell: string, shape: SpotShape, turn: number): string => {
  const house = spotHouse(ground, cell, shape, turn);
  return house ? `Next digit: where ${house.said} can hold it.` : `No ${shapeSaid(ground, shape)} here.`;
};

/** The spot marks of the chosen cells, each with its house: "4: one of two cells of row 3 of the mill." */
export const spotsSaid = (ground: Ground, { spots }: Position, chosen: readonly string[]): string[] =>
  spots
    .filter(({ cells }) => cells.some((cell) => chosen.includes(cell)))
    .map(({ digit, house, cells }) => {
      const { said } = ground.houses.get(house)!;
      return cells.length === 1
        ? `The ${digit} of ${said} is in this cell.`
        : `The ${digit} of ${said} is in one of these ${counted(cells.length)} cells.`;
    });
