import { digitsOf } from "../board/digits.ts";
import { digitsText } from "../rules/in-words.ts";
import { shown } from "../rules/shown.ts";
import { counted, listed } from "../speech/english/counts.ts";
import { placeOf } from "./canvas.ts";
import type { Grid } from "./puzzle.ts";
import { readRegions } from "./regions.ts";
import { readText, shownTree } from "./texts.ts";
import { isNothing, type Keys, onlyKeys, type Scalar, type Spot, type Tell, type Tree, under } from "./tree.ts";

const mostSize = 25;
/** Rows and columns of the canvas. */
const mostLines = 100;
const mostGrids = 40;

const keys = ["id", "called", "size", "at", "digits", "regions"];

/** A grid with where it stands; `spots.id` is where its name does. */
export interface ReadGrid {
  readonly grid: Grid;
  readonly spot: Spot;
}
export interface ReadGrids {
  readonly grids: readonly ReadGrid[];
  /** Every grid's size and place are known, so that the canvas is. */
  readonly placed: boolean;
}

/** How a grid is said that the file gives no name: "the grid" where it is the only one. */
export const calledByDefault = (id: string, isOnly: boolean): string => {
  const words = id.split("-").filter((word) => word !== "");
  if (isOnly || words.length === 0) return "the grid";
  if (words.length === 1 && (/\d/.test(id) || id.length === 1)) return `grid ${id}`;
  return words.includes("grid") ? `the ${words.join(" ")}` : `the ${words.join(" ")} grid`;
};

const readId = (grid: Keys, tell: Tell): string | undefined => {
  const tree = under(grid, "id");
  if (!tree) return tell(grid, "a grid without an id", "an id as well, such as id: main");
  const id = tree.shape === "scalar" ? tree.text : "";
  const right = "an id of a-z, 0-9 and -, such as north; cells is taken";
  if (!/^[a-z0-9-]{1,40}$/.test(id) || id === "cells") return tell(tree, shownTree(tree), right);
  return id;
};

const readSize = (grid: Keys, tell: Tell): number | undefined => {
  const tree = under(grid, "size");
  const size = tree?.shape === "scalar" ? tree.value : undefined;
  if (Number.isInteger(size) && (size as number) >= 1 && (size as number) <= mostSize) return size as number;
  tell(tree ?? grid, tree ? shownTree(tree) : "a grid without a size", `a size from 1 to ${mostSize}`);
  return undefined;
};

const readAt = (tree: Tree | undefined, size: number, tell: Tell): { row: number; column: number } | undefined => {
  if (!tree) return { row: 1, column: 1 };
  const place = tree.shape === "scalar" ? placeOf(tree.text) : undefined;
  if (!place) return tell(tree, shownTree(tree), "the canvas cell of the grid's top left corner, such as r1c1");
  const last = Math.max(place.row, place.column) + size - 1;
  if (last > mostLines)
    return tell(tree, shownTree(tree), `a place that keeps the canvas within ${mostLines} rows and columns`);
  return place;
};

interface DigitToken {
  readonly digits: readonly number[];
  readonly read: string;
  spot(): Spot;
}

const run = (first: number, last: number): number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => first + k);

const tokensOf = (tree: Tree): DigitToken[] => {
  if (tree.shape === "list") return tree.items.flatMap((item) => tokensOf(item));
  if (tree.shape === "keys") return [{ digits: [], read: "keys", spot: () => tree }];
  return [...tree.text.matchAll(/\S+/g)].map(({ 0: read, index }) => {
    const [, first, last] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(read) ?? [];
    return {
      digits: first ? run(Number(first), Number(last ?? first)) : [],
      read,
      spot: () => (tree as Scalar).spotAt(index),
    };
  });
};

const readDigits = (tree: Tree | undefined, size: number, tell: Tell): number[] => {
  if (!tree) return run(1, size);
  const tokens = tokensOf(tree);
  const right = 'whole numbers from 0 to 31, such as 1-9 or "1 2 3 5"';
  const strange = tokens.filter(({ digits }) => digits.length === 0 || digits.at(-1)! > 31);
  for (const { spot, read } of strange.slice(0, mostSize)) tell(spot(), shown(read), right);
  if (tokens.length === 0) tell(tree, shownTree(tree), right);
  if (strange.length > 0 || tokens.length === 0) return run(1, size);
  const all = tokens.flatMap(({ digits, spot }) => digits.map((digit) => ({ digit, spot })));
  const digits = [...new Set(all.map(({ digit }) => digit))].sort((a, b) => a - b);
  const twice = all.find(({ digit }, k) => all.findIndex((other) => other.digit === digit) < k);
  if (twice) tell(twice.spot(), `${twice.digit} twice`, "each digit once");
  else if (digits.length !== size) {
    const read = `${counted(digits.length)} ${digits.length === 1 ? "digit" : "digits"}`;
    tell(tree, read, `${counted(size)} digits, as many as the grid has rows`);
  }
  // Too few are made up for, so that one fault isn't told again of every given and sum.
  return digits.length < size ? [...new Set([...digits, ...run(1, size)])].sort((a, b) => a - b) : digits;
};

const readGrid = (tree: Tree, index: number, isOnly: boolean, tell: Tell): ReadGrid | undefined => {
  if (tree.shape !== "keys") return tell(tree, shownTree(tree), "a grid: { id, size, at, digits, regions }");
  onlyKeys(tree, keys, tell);
  const id = readId(tree, tell) ?? `grid-${index + 1}`;
  const called = under(tree, "called");
  const name = called && readText(called, { right: "how to say the grid, such as the north grid", most: 60 }, tell);
  const size = readSize(tree, tell);
  if (size === undefined) return undefined;
  const place = readAt(under(tree, "at"), size, tell);
  if (!place) return undefined;
  const digits = readDigits(under(tree, "digits"), size, tell);
  const regions = readRegions(under(tree, "regions"), size, tree, tell);
  return { spot: tree, grid: { id, called: name ?? calledByDefault(id, isOnly), size, ...place, digits, ...regions } };
};

const tellSameIds = (list: readonly Tree[], tell: Tell): void => {
  const seen = new Set<string>();
  for (const tree of list) {
    const id = tree.shape === "keys" ? under(tree, "id") : undefined;
    if (id?.shape !== "scalar") continue;
    if (seen.has(id.text)) tell(id, `a second grid with the id ${id.text}`, "an id of its own for each grid");
    seen.add(id.text);
  }
};

/** The grids that the file lists; a grid whose size or place can't be known is left out. */
export const readGrids = (tree: Tree | undefined, root: Spot, tell: Tell): ReadGrids => {
  const right = "a list of grids, each with an id and a size";
  if (!tree || isNothing(tree)) return tell(tree ?? root, "no grids", right) ?? { grids: [], placed: false };
  if (tree.shape !== "list" || tree.items.length === 0)
    return tell(tree, shownTree(tree), right) ?? { grids: [], placed: false };
  if (tree.items.length > mostGrids)
    return tell(tree, `${tree.items.length} grids`, `${mostGrids} grids at most`) ?? { grids: [], placed: false };
  const read = tree.items.map((item, k) => readGrid(item, k, tree.items.length === 1, tell));
  tellSameIds(tree.items, tell);
  const grids = read.flatMap((grid) => grid ?? []);
  return { grids, placed: grids.length === read.length };
};

const overlap = (a: Grid, b: Grid): boolean =>
  a.row < b.row + b.size && b.row < a.row + a.size && a.column < b.column + b.size && b.column < a.column + a.size;

const said = ({ called, digits }: Grid): string => `${called} (${digitsText(digitsOf(digits))})`;

/** Tells grids that share cells but no digit: every two of them, and three or more that only all together share none. */
export const tellNoCommonDigit = (
  grids: readonly ReadGrid[],
  shared: readonly (readonly number[])[],
  tell: Tell,
): void => {
  const empty = (some: readonly number[]): boolean =>
    some.length > 1 &&
    !grids[some[0]!]!.grid.digits.some((digit) => some.every((k) => grids[k]!.grid.digits.includes(digit)));
  const told = new Set<string>();
  for (const [k, { grid }] of grids.entries())
    for (let j = 0; j < k; j++) if (overlap(grids[j]!.grid, grid) && empty([j, k])) told.add(`${j},${k}`);
  for (const some of shared) {
    const isTold = [...told].some((pair) => pair.split(",").every((k) => some.includes(Number(k))));
    if (!isTold && empty(some)) told.add(some.join());
  }
  for (const some of told) {
    const named = some.split(",").map((k) => grids[Number(k)]!);
    const names = listed(named.map(({ grid }) => said(grid)));
    tell(named.at(-1)!.spot, `cells that ${names} share`, "grids that have a digit in common where they overlap");
  }
};
