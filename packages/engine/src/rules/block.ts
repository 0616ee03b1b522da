import { cellAt, nameOf, type Place } from "../puzzle/canvas.ts";
import { type Faulty, faulty, type Setting } from "./contract.ts";

/** The places of the square block with this top left cell, row by row, or a fault where one lies in no grid. */
export const blockAt = (at: Place, size: number, { canvas }: Setting): readonly Place[] | Faulty => {
  const steps = Array.from({ length: size }, (_, k) => k);
  const places = steps.flatMap((down) => steps.map((right) => ({ row: at.row + down, column: at.column + right })));
  const off = places.find((place) => cellAt(canvas, place) === undefined);
  if (!off) return places;
  const right = `the top left of ${size}x${size} cells of the grids; ${nameOf(off)} is in none`;
  return faulty({ at: ["at"], read: nameOf(at), right });
};
