import { cellNamed, listed, nounsFor, type PlanBeat } from "@solvewright/engine";
import type { Show } from "./show.ts";

/** What is put on the board at a beat, in the placed style. */
export interface Entries {
  /** "4 in row 5, column 3 of the yard" */
  readonly enter: readonly string[];
  /** "1 or 2 in row 8, column 7 of the mill", "where the 6 of column 8 goes: rows 7 and 8" */
  readonly mark: readonly string[];
}

/** The digits that a beat settles and the marks that it writes. */
export const entriesOf = ({ board, plan }: Pick<Show, "board" | "plan">, { steps, writes }: PlanBeat): Entries => {
  const nouns = nounsFor(board, "placed");
  const cell = (name: string): number => cellNamed(board.canvas, name)!;
  const placed = plan.steps.filter(({ n }) => steps.includes(n)).flatMap(({ places }) => Object.entries(places));
  return {
    enter: placed.map(([name, digit]) => `${digit} ${nouns.here(cell(name))}`),
    mark: [
      ...Object.entries(writes.cells).map(([name, digits]) => `${listed(digits)} ${nouns.here(cell(name))}`),
      ...writes.spots.map(
        ({ digit, house, cells }) => `the ${digit} of ${nouns.house(house)} in ${nouns.cells(cells.map(cell))}`,
      ),
    ],
  };
};
