import { shown } from "../rules/shown.ts";
import { counted, listed } from "../speech/english/counts.ts";
import { rowsIn, tellRows } from "./picture.ts";
import type { Grid } from "./puzzle.ts";
import { isNothing, type Scalar, type Spot, type Tell, type Tree } from "./tree.ts";

export type Regions = Pick<Grid, "box" | "regions">;
interface Box {
  readonly rows: number;
  readonly columns: number;
}

/** Rows and columns of a box where the file does not say, by the grid's size. */
const defaultBoxes: Readonly<Record<number, readonly [number, number]>> = {
  4: [2, 2],
  6: [2, 3],
  8: [2, 4],
  9: [3, 3],
  10: [2, 5],
  12: [3, 4],
  15: [3, 5],
  16: [4, 4],
  20: [4, 5],
  25: [5, 5],
};
export const defaultBox = (size: number): Box | undefined => {
  const [rows, columns] = defaultBoxes[size] ?? [];
  return rows && columns ? { rows, columns } : undefined;
};

const letters = "abcdefghijklmnopqrstuvwxyz";

/** Boxes, lettered row by row. */
export const boxed = (size: number, box: Box): Regions => {
  const across = size / box.columns;
  const letter = (row: number, column: number): string =>
    letters[Math.floor(row / box.rows) * across + Math.floor(column / box.columns)]!;
  return { box, regions: Array.from({ length: size * size }, (_, k) => letter(Math.floor(k / size), k % size)) };
};

const forms = "none, boxes, boxes 2x3 (rows x columns of a box) or a letter map";

const boxesOf = (scalar: Scalar, size: number, said: RegExpExecArray, tell: Tell): Regions => {
  const box = { rows: Number(said[1]), columns: Number(said[2]) };
  if (box.rows * box.columns === size) return boxed(size, box);
  tell(scalar, shown(scalar.text), `boxes of ${size} cells, rows times columns`);
  return {};
};

const byDefault = (spot: Spot, size: number, tell: Tell): Regions => {
  const box = defaultBox(size);
  if (box) return boxed(size, box);
  tell(
    spot,
    `boxes for a size of ${size}`,
    "regions: none, boxes 2x3 (rows x columns of a box) or a letter map; this size has no boxes of its own",
  );
  return {};
};

const unequal = (map: readonly string[], size: number): string[] =>
  [...new Set(map)].flatMap((letter) => {
    const count = map.filter((other) => other === letter).length;
    return count === size ? [] : [`region ${letter} with ${counted(count)} ${count === 1 ? "cell" : "cells"}`];
  });

const mapOf = (scalar: Scalar, size: number, tell: Tell): Regions => {
  const rows = rowsIn(scalar.text, size, false);
  const strange = rows
    .flatMap((row) => row.slice(0, size + 1))
    .slice(0, size * size)
    .filter(({ token }) => !/^[a-zA-Z]$/.test(token));
  for (const { token, index } of strange)
    tell(
      scalar.spotAt(index),
      token,
      token === "#" ? "no comment in a map" : "a letter, the same for all cells of a region",
    );
  const isSquare = strange.length === 0 && tellRows(rows, scalar, { size, what: "the map" }, tell);
  const map = rows.slice(0, size).flatMap((row) => Array.from({ length: size }, (_, k) => row[k]?.token ?? "?"));
  const wrong = isSquare ? unequal(map, size) : [];
  if (wrong.length > 0) tell(scalar, listed(wrong), `${counted(size)} cells in each region`);
  return { regions: [...map, ...Array<string>(size * size - map.length).fill("?")] };
};

/** The regions of a grid of this size; `grid` is where a fault is told when nothing is said of them. */
export const readRegions = (tree: Tree | undefined, size: number, grid: Spot, tell: Tell): Regions => {
  if (tree === undefined || isNothing(tree)) return byDefault(tree ?? grid, size, tell);
  if (tree.shape !== "scalar") return tell(tree, tree.shape === "list" ? "a list" : "keys", forms) ?? {};
  const text = tree.text.trim();
  if (text === "none") return {};
  if (text === "boxes") return byDefault(tree, size, tell);
  const said = /^boxes\s+(\d{1,2})\s*x\s*(\d{1,2})$/.exec(text);
  if (said) return boxesOf(tree, size, said, tell);
  const isMap = text.includes("\n") || text.replace(/\s/g, "").length === size * size;
  return isMap ? mapOf(tree, size, tell) : (tell(tree, shown(text), forms) ?? {});
};
