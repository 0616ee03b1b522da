import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs, inEveryWindow } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";

const isIn = ({ row, column, size }: Grid, place: Place): boolean =>
  place.row >= row && place.row < row + size && place.column >= column && place.column < column + size;

/** Class 0 is low, 1 middle, 2 high, cut from the digits of the grid that the line lies in. */
export const oracle: Oracle = (entry, { puzzle, n }) => {
  const line = `line${n}`;
  const places = placesIn(entry);
  const grid = puzzle.grids.find((one) => one.digits.length % 3 === 0 && places.every((place) => isIn(one, place)))!;
  const ranked = [...grid.digits].sort((a, b) => a - b);
  const classes = ranked.map((digit, rank) => `${line}_of(${digit},${Math.floor((3 * rank) / ranked.length)}).`);
  return [alongAs(line, places), classes.join(" "), inEveryWindow(line, 3, places.length)].join("\n");
};
