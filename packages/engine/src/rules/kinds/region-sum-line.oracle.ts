import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";

const letterAt = ({ regions, size, row, column }: Grid, place: Place): string | undefined => {
  const [down, right] = [place.row - row, place.column - column];
  return Math.min(down, right) < 0 || Math.max(down, right) >= size ? undefined : regions?.[down * size + right];
};

/** `run(K,J)`: cell K of the line lies in its run J; a run ends where the region's letter changes. */
export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { grid: id } = entry.body as { grid?: string };
  const places = placesIn(entry);
  const grid = puzzle.grids.find(
    (one) => (id === undefined || one.id === id) && places.every((place) => letterAt(one, place)),
  );
  const letters = places.map((place) => letterAt(grid!, place));
  const [line, run] = [`line${n}`, `run${n}`];
  const changes = (k: number): number => letters.slice(1, k + 1).filter((letter, j) => letter !== letters[j]).length;
  return [
    alongAs(line, places),
    places.map((_, k) => `${run}(${k},${changes(k)}).`).join(" "),
    `:- ${run}(_,J), ${run}(_,J+1), #sum { D,K : ${line}(K,D), ${run}(K,J) ; -D,K : ${line}(K,D), ${run}(K,J+1) } != 0.`,
  ].join("\n");
};
