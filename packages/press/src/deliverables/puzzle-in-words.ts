import {
  type AreasBody,
  type Board,
  type Cell,
  capital,
  cellNamed,
  digitsOf,
  digitsSaid,
  type Grid,
  listedApart,
  nounsFor,
  type Place,
  type RuleInstance,
} from "@solvewright/engine";

const boxes = ({ box, regions }: Grid): string => {
  if (box) return `, cut into boxes of ${box.rows} rows and ${box.columns} columns`;
  return regions ? ", cut into regions" : "";
};

/** "The mill: 8 rows and 8 columns, cut into boxes of 2 rows and 4 columns; digits 1 to 8." */
export const gridText = (grid: Grid): string =>
  `${capital(grid.called)}: ${grid.size} rows and ${grid.size} columns${boxes(grid)}; digits ${digitsSaid(digitsOf(grid.digits))}.`;

const cellsOf = (board: Board, grid: number, row: number): Cell[] => {
  const sheet = board.puzzle.grids[grid]!;
  return Array.from(
    { length: sheet.size },
    (_, column) => cellNamed(board.canvas, `r${sheet.row + row}c${sheet.column + column}`)!,
  );
};

/** The letters of the region map, row by row, for grids whose regions are no boxes. */
const mapText = (board: Board, grid: number): string[] => {
  const sheet = board.puzzle.grids[grid]!;
  if (sheet.box || !sheet.regions) return [];
  const letterOf = new Map(
    board.houses
      .filter((house) => house.shape === "region" && house.grid === grid)
      .flatMap(({ cells, label }) => cells.map((cell) => [cell, label] as const)),
  );
  const rows = Array.from({ length: sheet.size }, (_, row) =>
    cellsOf(board, grid, row)
      .map((cell) => letterOf.get(cell))
      .join(" "),
  );
  return [`Its regions, by letter: ${rows.map((letters, row) => `row ${row + 1}, ${letters}`).join("; ")}.`];
};

const span = (from: number, to: number): string => (from === to ? `${from}` : `${from} to ${to}`);

/** "rows 1 to 3, columns 6 to 8 of the mill": a block of cells, by its first and last as places on the canvas. */
const blockText = (grid: Grid, first: Place, last: Place): string => {
  const rows = span(first.row - grid.row + 1, last.row - grid.row + 1);
  const columns = span(first.column - grid.column + 1, last.column - grid.column + 1);
  return `rows ${rows}, columns ${columns} of ${grid.called}`;
};

/** Which cells two grids share, under both names. Two squares share a block. */
const sharedText = ({ puzzle: { grids }, canvas }: Board): string[] =>
  grids.flatMap((upper, index) =>
    grids.slice(0, index).flatMap((lower, other) => {
      const shared = canvas.places.filter((_, cell) => [index, other].every((k) => canvas.grids[cell]!.includes(k)));
      const [first, last] = [shared[0], shared.at(-1)];
      if (!first || !last) return [];
      return [`${capital(blockText(lower, first, last))} are also ${blockText(upper, first, last)}.`];
    }),
  );

/** Whether a clue's cells come one after the other: along a line, or as the setter counted them out. */
const inOrder = ({ kind }: RuleInstance): boolean => ["drag", "points"].includes(kind.body.gesture);

/** Cells of an area as one reads, since they have no order. */
const readAlong = ({ kind, cells }: RuleInstance): Cell[] =>
  kind.body.gesture === "sweep" ? [...cells].sort((a, b) => a - b) : [...cells];

/** "row 6, column 1; row 7, column 1 of the mill": one after the other, each grid named behind the last in it. */
const pathText = ({ puzzle }: Board, cells: readonly Cell[], nameOf: (cell: Cell) => string): string =>
  cells
    .map((cell, k) => {
      const next = cells[k + 1];
      const of = puzzle.grids.map(({ called }) => ` of ${called}`).find((end) => nameOf(cell).endsWith(end)) ?? "";
      const goesOn = next !== undefined && nameOf(next).endsWith(of);
      return goesOn ? nameOf(cell).slice(0, nameOf(cell).length - of.length) : nameOf(cell);
    })
    .join("; ");

/** The areas of a clue that has several, which only its body tells apart. */
const areasOf = ({ puzzle, canvas }: Board, { id }: RuleInstance): readonly (readonly Cell[])[] => {
  const { areas = [] } = puzzle.rules.find((entry) => entry.id === id)!.body as Partial<AreasBody>;
  return areas.map((area) => area.map(({ row, column }) => cellNamed(canvas, `r${row}c${column}`)!));
};

/** "Cage of 3: row 8, columns 6 and 7 of the mill."; a line's cells one after the other. */
export const clueText = (board: Board, rule: RuleInstance): string => {
  const nouns = nounsFor(board, "placed");
  const { called, noun } = nouns.words(rule.id);
  const areas = areasOf(board, rule).map((area) => `an area of ${nouns.cells(area)}`);
  const cells = inOrder(rule) ? pathText(board, rule.cells, nouns.cell) : nouns.cells(readAlong(rule));
  if (areas.length > 0) return `${capital(called ?? noun)}: ${listedApart(areas)}.`;
  return `${capital(called ?? noun)}: ${cells}.`;
};

const givensText = (board: Board): string[] => {
  const { givens } = board.puzzle;
  const nouns = nounsFor(board, "placed");
  if (givens.size === 0) return ["No digit is given."];
  return [`Given: ${[...givens].map(([cell, digit]) => `${digit} ${nouns.here(cell)}`).join("; ")}.`];
};

/** All that is drawn, for someone who does not see it: grids, shared cells, givens, clues. A paragraph each. */
export const puzzleInWords = (board: Board): string[] => [
  ...board.puzzle.grids.flatMap((grid, index) => [gridText(grid), ...mapText(board, index)]),
  ...sharedText(board),
  ...givensText(board),
  ...board.rules.filter(({ cells }) => cells.length > 0).map((rule) => clueText(board, rule)),
];
