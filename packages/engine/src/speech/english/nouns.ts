import type { Board, House } from "../../board/board.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Words } from "../../rules/contract.ts";
import type { Part, Style } from "../line.ts";
import { counted, listed, listedApart, ordinal } from "./counts.ts";

/** One vocabulary of nouns for both styles. Texts begin in lower case; `of` says what they speak of. */
export interface Nouns {
  readonly style: Style;
  readonly board: Board;
  /** "this row", "row 3 of the mill". */
  house(id: string): string;
  /** Several houses: "these two rows", "rows 3 and 5 and column 2". */
  houses(ids: readonly string[]): string;
  /** The same one by one, to be listed with other things: "these two rows", "this box". */
  houseNames(ids: readonly string[]): string[];
  /** "row", "box", "region", "diagonal": what sort of house it is. */
  sort(id: string): string;
  /** "this cell", "row 2, column 4 of the yard". */
  cell(cell: Cell): string;
  /** "here", "in row 2, column 4 of the yard". */
  here(cell: Cell): string;
  /** "these two cells", "row 2, columns 4 and 5". */
  cells(cells: readonly Cell[]): string;
  /** "this cage of 13", "the cage of 13 at row 1, column 2". */
  rule(id: string): string;
  words(rule: string): Words;
}

const severalGrids = (board: Board): boolean => board.puzzle.grids.length > 1;
const inGrid = (board: Board, grid: Grid): string => (severalGrids(board) ? ` of ${grid.called}` : "");

/** The grid that a cell is named in: the one that is spoken of where it lies in it, else the topmost. */
const gridOf = (board: Board, cell: Cell, spoken: number | undefined): Grid => {
  const under = board.canvas.grids[cell]!;
  return board.puzzle.grids[spoken !== undefined && under.includes(spoken) ? spoken : under.at(-1)!]!;
};

const rowIn = (board: Board, grid: Grid, cell: Cell): number => board.canvas.places[cell]!.row - grid.row + 1;
const columnIn = (board: Board, grid: Grid, cell: Cell): number => board.canvas.places[cell]!.column - grid.column + 1;

const placedCell = (board: Board, cell: Cell, spoken?: number): string => {
  const grid = gridOf(board, cell, spoken);
  return `row ${rowIn(board, grid, cell)}, column ${columnIn(board, grid, cell)}${inGrid(board, grid)}`;
};

const ascending = (numbers: Iterable<number>): number[] => [...numbers].sort((a, b) => a - b);

/** Cells of one grid, those of one row together: "row 2, columns 4 and 5". */
const placedCells = (board: Board, cells: readonly Cell[], spoken?: number): string => {
  const holds = (index: number): boolean => cells.every((cell) => board.canvas.grids[cell]!.includes(index));
  const grid =
    board.puzzle.grids[
      spoken !== undefined && holds(spoken) ? spoken : [...board.puzzle.grids.keys()].findLast(holds)!
    ];
  if (!grid) return listed(cells.map((cell) => placedCell(board, cell, spoken)));
  const rows = new Map<number, number[]>();
  for (const cell of cells)
    rows.set(rowIn(board, grid, cell), [...(rows.get(rowIn(board, grid, cell)) ?? []), columnIn(board, grid, cell)]);
  const columns = new Set(cells.map((cell) => columnIn(board, grid, cell)));
  if (columns.size === 1 && rows.size > 1)
    return `column ${[...columns][0]}, rows ${listed(ascending(rows.keys()))}${inGrid(board, grid)}`;
  const groups = [...rows].map(
    ([row, inRow]) => `row ${row}, ${inRow.length > 1 ? "columns" : "column"} ${listed(ascending(inRow))}`,
  );
  return `${groups.length > 2 ? listedApart(groups) : listed(groups)}${inGrid(board, grid)}`;
};

const third = (index: number, of: number, names: readonly [string, string, string]): string | undefined =>
  of === 1 ? "" : index === 0 ? names[0] : index === of - 1 ? names[2] : of === 3 ? names[1] : undefined;

/** "the top left box" where there are three rows of boxes at most, else "the left box in rows 3 and 4". */
const placedBox = (board: Board, house: House, grid: Grid): string => {
  const box = grid.box!;
  const first = house.cells[0]!;
  const [down, right] = [(rowIn(board, grid, first) - 1) / box.rows, (columnIn(board, grid, first) - 1) / box.columns];
  const row = third(down, grid.size / box.rows, ["top", "middle", "bottom"]);
  const column = third(right, grid.size / box.columns, ["left", "middle", "right"]);
  const of = inGrid(board, grid);
  if (row !== undefined && column !== undefined) {
    const place =
      row === "middle" && column === "middle"
        ? "central"
        : row === "middle" && column
          ? `middle ${column}`
          : `${row} ${column}`;
    return `the ${place.trim()} box${of}`;
  }
  const rows = `rows ${down * box.rows + 1} ${box.rows === 2 ? "and" : "to"} ${(down + 1) * box.rows}`;
  return `the ${column ?? ordinal(right + 1)} box in ${rows}${of}`;
};

const placedHouse = (board: Board, house: House): string => {
  const grid = house.grid === undefined ? undefined : board.puzzle.grids[house.grid]!;
  const of = grid ? inGrid(board, grid) : "";
  if (house.shape === "row" || house.shape === "column") return `${house.shape} ${house.label}${of}`;
  if (house.shape === "region" && grid?.box) return placedBox(board, house, grid);
  if (house.shape === "region") return `the region at ${placedCell(board, house.cells[0]!)}`;
  return `the ${sortOf(board, house)}${house.label === "up" || house.label === "down" ? ` going ${house.label}` : ` at ${placedCell(board, house.cells[0]!)}`}${of}`;
};

/** "Rows 1, 5 and 9 of the mill": rows or columns of one grid are named together. */
const placedHouses = (board: Board, houses: readonly House[]): string => {
  const lines = new Map<string, House[]>();
  for (const house of houses) {
    const isLine = house.shape === "row" || house.shape === "column";
    const key = isLine ? `${house.shape} ${house.grid}` : house.id;
    lines.set(key, [...(lines.get(key) ?? []), house]);
  }
  const names = [...lines.values()].map((line) => {
    const [first] = line as [House];
    if (line.length === 1) return placedHouse(board, first);
    return `${first.shape}s ${listed(line.map(({ label }) => label))}${inGrid(board, board.puzzle.grids[first.grid!]!)}`;
  });
  return listed(names);
};

const sortOf = (board: Board, house: House): string => {
  if (house.shape === "region") return board.puzzle.grids[house.grid!]!.box ? "box" : "region";
  if (house.shape !== "other") return house.shape;
  if (house.id.includes("/diagonal/")) return "diagonal";
  return house.id.includes("/window/") ? "window" : "extra region";
};

const plural = (sort: string): string => (sort === "box" ? "boxes" : `${sort}s`);

const wordsOf = (board: Board, id: string): Words => {
  const rule = board.rule(id)!;
  return rule.kind.words(rule.instance);
};

const inReadingOrder = (cells: readonly Cell[]): Cell[] => [...cells].sort((a, b) => a - b);

/** Cells of an area have no order, whatever that of the file is. */
const isArea = ({ body }: { readonly body: { readonly gesture: string } }): boolean => body.gesture === "sweep";

const placedRule = (board: Board, id: string, spoken?: number): string => {
  const { called, noun, at } = wordsOf(board, id);
  const { cells, kind } = board.rule(id)!;
  const isPair = cells.length === 2;
  const place =
    at.length === 0
      ? ""
      : isPair
        ? ` at ${placedCells(board, isArea(kind) ? inReadingOrder(at) : at, spoken)}`
        : ` at ${placedCell(board, at[0]!, spoken)}`;
  return `the ${called ?? noun}${place}`;
};

/** `spoken`: the index of the grid that is spoken of, in which shared cells are named. */
export const nounsFor = (board: Board, style: Style, spoken?: number): Nouns => {
  const house = (id: string): House => board.house(id)!;
  const pointing = style === "pointing";
  const sort = (id: string): string => sortOf(board, house(id));
  const houseNames = (ids: readonly string[]): string[] => {
    if (!pointing) return ids.map((id) => placedHouse(board, house(id)));
    const sorts = new Map<string, number>();
    for (const id of ids) sorts.set(sort(id), (sorts.get(sort(id)) ?? 0) + 1);
    return [...sorts].map(([name, many]) => (many === 1 ? `this ${name}` : `these ${counted(many)} ${plural(name)}`));
  };
  return {
    style,
    board,
    sort,
    house: (id) => (pointing ? `this ${sort(id)}` : placedHouse(board, house(id))),
    houses: (ids) => (pointing ? listed(houseNames(ids)) : placedHouses(board, ids.map(house))),
    houseNames,
    cell: (cell) => (pointing ? "this cell" : placedCell(board, cell, spoken)),
    here: (cell) => (pointing ? "here" : `in ${placedCell(board, cell, spoken)}`),
    cells: (cells) => {
      if (!pointing) return placedCells(board, cells, spoken);
      return cells.length === 1 ? "this cell" : `these ${counted(cells.length)} cells`;
    },
    rule: (id) => {
      const { called, noun } = wordsOf(board, id);
      return pointing ? `this ${called ?? noun}` : placedRule(board, id, spoken);
    },
    words: (id) => wordsOf(board, id),
  };
};

/** A reason in a line. */
export const because = (text: string, of?: Part["of"]): Part => ({ text, role: "because", ...(of ? { of } : {}) });
/** What follows. */
export const so = (text: string, of?: Part["of"]): Part => ({ text, role: "so", ...(of ? { of } : {}) });
