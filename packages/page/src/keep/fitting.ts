import { cellIn, type Ground } from "../solve/ground.ts";
import type { Position } from "../solve/position.ts";

/** What of a board has its place in this puzzle: digits that a cell can hold where none is given, marks, spots. */
export const fitting = (ground: Ground, { settled, marks, spots }: Position): Position => {
  const holds = (cell: string, digit: number): boolean =>
    ground.cells.has(cell) && cellIn(ground, cell).given === undefined && cellIn(ground, cell).digits.includes(digit);
  const markList = Object.entries(marks).map(([cell, digits]) => [cell, digits.filter((d) => holds(cell, d))] as const);
  return {
    settled: Object.fromEntries(Object.entries(settled).filter(([cell, digit]) => holds(cell, digit))),
    marks: Object.fromEntries(markList.filter(([, digits]) => digits.length > 0)),
    spots: spots.flatMap((spot) => {
      const house = ground.houses.get(spot.house);
      const cells = spot.cells.filter((cell) => house?.cells.includes(cell) && holds(cell, spot.digit));
      return cells.length > 0 ? [{ ...spot, cells }] : [];
    }),
  };
};
