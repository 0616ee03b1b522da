import { counted } from "../speech/english/counts.ts";
import type { Scalar, Tell } from "./tree.ts";

/** One cell of a picture or a map, and where it stands in the text. */
export interface Token {
  readonly token: string;
  readonly index: number;
}

/**
 * The rows of a picture: one a line, cells with or without spaces between them (with, where `apart`); or all
 * size x size cells in one line.
 */
export const rowsIn = (text: string, size: number, apart: boolean): Token[][] => {
  const rows: Token[][] = [];
  const cell = apart ? /\S+/g : /\S/gu;
  let start = 0;
  for (const line of text.split("\n")) {
    rows.push([...line.matchAll(cell)].map(({ 0: token, index }) => ({ token, index: start + index })));
    start += line.length + 1;
  }
  while (rows.at(-1)?.length === 0) rows.pop();
  while (rows[0]?.length === 0) rows.shift();
  const [only, ...others] = rows;
  if (only?.length !== size * size || others.length > 0) return rows;
  return Array.from({ length: size }, (_, row) => only.slice(row * size, (row + 1) * size));
};

interface Square {
  readonly size: number;
  /** "the map", "the picture of the north grid". */
  readonly what: string;
}

/** Tells where the rows make no square of this size; true where they do. */
export const tellRows = (
  rows: readonly (readonly Token[])[],
  scalar: Scalar,
  { size, what }: Square,
  tell: Tell,
): boolean => {
  const cells = `${counted(size)} cells in each row`;
  const lacks = rows.length !== size;
  if (lacks) {
    const read = `${counted(rows.length)} ${rows.length === 1 ? "row" : "rows"}`;
    const all = rows.length === 1 ? `, or its ${size * size} cells in one line` : "";
    tell(scalar, read, `${counted(size)} rows in ${what}, as many as the grid has${all}`);
  }
  if (rows.length === 1 && lacks) return false;
  for (const row of rows.slice(0, size)) {
    if (row.length > size) tell(scalar.spotAt(row[size]!.index), "a cell too many", cells);
    if (row.length < size)
      tell(scalar.spotAt(row[0]?.index ?? 0), `${counted(row.length)} ${row.length === 1 ? "cell" : "cells"}`, cells);
  }
  return !lacks && rows.every((row) => row.length === size);
};
