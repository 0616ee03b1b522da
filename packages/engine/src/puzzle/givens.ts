import { type Digits, digitsOf, has, isEmpty } from "../board/digits.ts";
import { offCanvas } from "../rules/bodies/path-text.ts";
import { digitsText } from "../rules/in-words.ts";
import { shown } from "../rules/shown.ts";
import { listed } from "../speech/english/counts.ts";
import { type Canvas, type Cell, cellAt, placeOf } from "./canvas.ts";
import { rowsIn, tellRows } from "./picture.ts";
import type { Grid } from "./puzzle.ts";
import { shownTree } from "./texts.ts";
import { isNothing, type Keys, type Spot, type Tell, type Tree } from "./tree.ts";

interface Given {
  readonly cell: Cell;
  readonly digit: number;
  readonly spot: Spot;
}
/** What givens are held to. */
export interface Ground {
  readonly canvas: Canvas;
  readonly grids: readonly Grid[];
  /** By cell: the digits that all its grids allow. */
  readonly domains: readonly Digits[];
}

const blanks = [".", "_", "?"];

const isBlank = (token: string, { digits }: Grid): boolean =>
  blanks.includes(token) || (token === "0" && !digits.includes(0));

const inPicture = (tree: Tree, grid: Grid, canvas: Canvas, tell: Tell): Given[] => {
  if (tree.shape !== "scalar")
    return tell(tree, shownTree(tree), "a picture: a row of cells a line, . where nothing is given") ?? [];
  const rows = rowsIn(tree.text, grid.size, grid.digits.at(-1)! > 9);
  tellRows(rows, tree, { size: grid.size, what: `the picture of ${grid.called}` }, tell);
  return rows.slice(0, grid.size).flatMap((row, down) =>
    row.slice(0, grid.size).flatMap(({ token, index }, right): Given[] => {
      if (isBlank(token, grid)) return [];
      const spot = tree.spotAt(index);
      const digit = /^\d{1,2}$/.test(token) ? Number(token) : -1;
      const cell = cellAt(canvas, { row: grid.row + down, column: grid.column + right })!;
      if (grid.digits.includes(digit)) return [{ cell, digit, spot }];
      tell(
        spot,
        shown(token),
        `a digit of ${grid.called}, ${digitsText(digitsOf(grid.digits))}, or . where nothing is given`,
      );
      return [];
    }),
  );
};

const inCells = (tree: Tree, canvas: Canvas, tell: Tell): Given[] => {
  if (isNothing(tree)) return [];
  if (tree.shape !== "keys") return tell(tree, shownTree(tree), "cells with their digits, such as { r1c1: 3 }") ?? [];
  return tree.entries.flatMap(({ key, keySpot, value }) => {
    const place = placeOf(key);
    const cell = place && cellAt(canvas, place);
    const digit = value.shape === "scalar" ? value.value : undefined;
    if (cell === undefined) tell(keySpot, shown(key), offCanvas(key, canvas));
    if (!Number.isInteger(digit)) tell(value, shownTree(value), "a digit");
    return cell === undefined || !Number.isInteger(digit) ? [] : [{ cell, digit: digit as number, spot: value }];
  });
};

const gather = (tree: Keys, { canvas, grids }: Ground, tell: Tell): Given[] =>
  tree.entries.flatMap(({ key, keySpot, value }) => {
    if (key === "cells") return inCells(value, canvas, tell);
    const grid = grids.find(({ id }) => id === key);
    if (grid) return isNothing(value) ? [] : inPicture(value, grid, canvas, tell);
    tell(keySpot, shown(key), `the id of a grid (${grids.map(({ id }) => id).join(", ")}), or cells`);
    return [];
  });

const isAllowed = ({ cell, digit, spot }: Given, { canvas, grids, domains }: Ground, tell: Tell): boolean => {
  const under = canvas.grids[cell]!.map((grid) => grids[grid]!);
  const shared = domains[cell]!;
  if (isEmpty(shared) || (digit >= 0 && digit < 32 && has(shared, digit))) return !isEmpty(shared);
  const whose =
    under.length === 1 ? `of ${under[0]!.called}` : `that ${listed(under.map(({ called }) => called))} share`;
  tell(spot, `${digit} in ${canvas.names[cell]}`, `a digit ${whose}, ${digitsText(shared)}`);
  return false;
};

/** The houses that a cell lies in, by id. */
const housesOf = (cell: Cell, { canvas, grids }: Ground): string[] => {
  const { row, column } = canvas.places[cell]!;
  return canvas.grids[cell]!.flatMap((index) => {
    const grid = grids[index]!;
    const [down, right] = [row - grid.row, column - grid.column];
    const region = grid.regions?.[down * grid.size + right] ?? "?";
    const own = [`${grid.id}/row/${down + 1}`, `${grid.id}/column/${right + 1}`];
    return region === "?" ? own : [...own, `${grid.id}/region/${region}`];
  });
};

/** Tells the first house in which a given meets an earlier one of its digit. */
const tellClashes = (givens: readonly Given[], ground: Ground, tell: Tell): void => {
  const { names } = ground.canvas;
  const stands = new Map<string, Cell>();
  for (const { cell, digit, spot } of givens) {
    const houses = housesOf(cell, ground);
    const house = houses.find((id) => stands.has(`${id} ${digit}`));
    if (house) {
      const other = stands.get(`${house} ${digit}`)!;
      tell(spot, `two ${digit}s in ${house} (${names[other]} and ${names[cell]})`, `each digit once in ${house}`);
    }
    for (const id of houses) if (!stands.has(`${id} ${digit}`)) stands.set(`${id} ${digit}`, cell);
  }
};

/** The givens, from pictures and single cells; a cell given twice with one digit is given once. */
export const readGivens = (tree: Tree | undefined, ground: Ground, tell: Tell): ReadonlyMap<Cell, number> => {
  if (!tree || isNothing(tree)) return new Map();
  if (tree.shape !== "keys")
    return tell(tree, shownTree(tree), "a picture for each grid by its id, or cells") ?? new Map();
  const known = new Map<Cell, number>();
  const kept: Given[] = [];
  for (const given of gather(tree, ground, tell).sort((a, b) => a.spot.from - b.spot.from)) {
    if (!isAllowed(given, ground, tell)) continue;
    const before = known.get(given.cell);
    const name = ground.canvas.names[given.cell];
    if (before === undefined) kept.push(given);
    else if (before !== given.digit)
      tell(given.spot, `${given.digit} in ${name}`, `one digit a cell; ${name} was given as ${before} before`);
    if (before === undefined) known.set(given.cell, given.digit);
  }
  tellClashes(kept, ground, tell);
  return known;
};
