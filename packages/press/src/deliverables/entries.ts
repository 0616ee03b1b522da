import { type Board, type Cell, cellNamed, listed, type Nouns, nounsFor, type PlanBeat } from "@solvewright/engine";
import type { Show } from "./show.ts";

/** What is put on the board at a beat, in the placed style. */
export interface Entries {
  /** "the yard": where all of it goes, said once; left out where there is one grid, one entry, or more than one grid in it. */
  readonly grid?: string;
  /** "4 in row 5, column 3 of the yard"; without the grid where `grid` names it. */
  readonly enter: readonly string[];
  /** "1 or 2 in row 8, column 7 of the mill", "the 6 of column 8 of the mill in rows 7 and 8" */
  readonly mark: readonly string[];
}

interface Entry {
  readonly cells: readonly Cell[];
  said(nouns: Nouns): string;
}

const withoutEnd = (text: string, end: string): string =>
  end && text.endsWith(end) ? text.slice(0, -end.length) : text;

/** "the 6 of column 8 of the mill in rows 7 and 8": neither the line nor the grid is said twice. */
const spotSaid = ({ house, cells, board }: Nouns, digit: number, id: string, places: readonly Cell[]): string => {
  const where = house(id);
  const grid = board.puzzle.grids.map(({ called }) => ` of ${called}`).find((of) => where.endsWith(of)) ?? "";
  const line = `${withoutEnd(where, grid)}, `;
  const within = withoutEnd(cells(places), grid);
  return `the ${digit} of ${where} in ${within.startsWith(line) ? within.slice(line.length) : within}`;
};

/** Cells that get the same marks are said together. */
const markEntries = ({ cells }: PlanBeat["writes"], cellOf: (name: string) => Cell): Entry[] => {
  const alike = new Map<string, Cell[]>();
  for (const [name, digits] of Object.entries(cells)) {
    const said = listed(digits);
    alike.set(said, [...(alike.get(said) ?? []), cellOf(name)]);
  }
  return [...alike].map(([digits, cells]) => ({ cells, said: (nouns) => `${digits} in ${nouns.cells(cells)}` }));
};

/** The last grid in which all the cells lie, where there are several grids. */
const gridOf = ({ puzzle: { grids }, canvas }: Board, cells: readonly Cell[]): number => {
  const holdsAll = (grid: number): boolean => cells.every((cell) => canvas.grids[cell]!.includes(grid));
  return grids.length > 1 ? [...grids.keys()].findLastIndex(holdsAll) : -1;
};

/** The digits that a beat settles and the marks that it writes. */
export const entriesOf = ({ board, plan }: Pick<Show, "board" | "plan">, { steps, writes }: PlanBeat): Entries => {
  const cellOf = (name: string): Cell => cellNamed(board.canvas, name)!;
  const placed = plan.steps.filter(({ n }) => steps.includes(n)).flatMap(({ places }) => Object.entries(places));
  const enter = placed.map(([name, digit]): Entry => {
    const cell = cellOf(name);
    return { cells: [cell], said: (nouns) => `${digit} ${nouns.here(cell)}` };
  });
  const spots = writes.spots.map(
    ({ digit, house, cells }): Entry => ({
      cells: [...board.house(house)!.cells, ...cells.map(cellOf)],
      said: (nouns) => spotSaid(nouns, digit, house, cells.map(cellOf)),
    }),
  );
  const mark = [...markEntries(writes, cellOf), ...spots];
  const all = [...enter, ...mark];
  const grid =
    all.length > 1
      ? gridOf(
          board,
          all.flatMap(({ cells }) => cells),
        )
      : -1;
  if (grid < 0) {
    const nouns = nounsFor(board, "placed");
    return { enter: enter.map(({ said }) => said(nouns)), mark: mark.map(({ said }) => said(nouns)) };
  }
  const { called } = board.puzzle.grids[grid]!;
  const nouns = nounsFor(board, "placed", grid);
  const once = ({ said }: Entry): string => said(nouns).replaceAll(` of ${called}`, "");
  return { grid: called, enter: enter.map(once), mark: mark.map(once) };
};

/** The same in sentences: "In the yard, enter 2 in row 4, column 2; 5 in row 5, column 1.", "Mark 1 in row 8, column 7." */
export const entriesSaid = ({ grid, enter, mark }: Entries): string[] => {
  const doing = [
    ...(enter.length > 0 ? [`enter ${enter.join("; ")}.`] : []),
    ...(mark.length > 0 ? [`mark ${mark.join("; ")}.`] : []),
  ];
  return doing.map((text, k) =>
    grid && k === 0 ? `In ${grid}, ${text}` : text.charAt(0).toUpperCase() + text.slice(1),
  );
};
