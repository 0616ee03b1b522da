import { type Canvas, type Cell, cellAt, nameOf, type Place, placeOf } from "../../puzzle/canvas.ts";
import type { FaultInText } from "../body.ts";
import { shown } from "../shown.ts";

/** A path as text: what could be read of it, and what is wrong, each with its offset in the text. */
export interface PathText {
  readonly places: readonly Place[];
  /** Of each place: its cell or run as it stands in the text, and where that starts (characters from 0). */
  readonly tokens: readonly { readonly token: string; readonly offset: number }[];
  readonly faults: readonly FaultInText[];
}

const run = (from: Place, to: Place): Place[] | undefined => {
  const down = to.row - from.row;
  const right = to.column - from.column;
  const length = Math.max(Math.abs(down), Math.abs(right));
  if (down !== 0 && right !== 0 && Math.abs(down) !== Math.abs(right)) return undefined;
  return Array.from({ length: length + 1 }, (_, k) => ({
    row: from.row + Math.sign(down) * k,
    column: from.column + Math.sign(right) * k,
  }));
};

/** What would be right in place of a cell that no grid holds. */
export const offCanvas = (token: string, { rows, columns }: Canvas): string => {
  const place = placeOf(token);
  const isWithin = place && place.row <= rows && place.column <= columns;
  return isWithin ? "a cell that lies in a grid" : `a cell of the canvas, r1c1 to r${rows}c${columns}`;
};

const readToken = (token: string, canvas: Canvas): { places: Place[]; right?: string } => {
  const names = token.split("-");
  if (names.length > 2 || names.some((name) => !/^r\d+c\d+$/.test(name)))
    return { places: [], right: "a cell such as r1c1, or a run such as r1c1-r1c5" };
  const off = names.find((name) => !placeOf(name) || cellAt(canvas, placeOf(name)!) === undefined);
  if (off) return { places: [], right: offCanvas(off, canvas) };
  const places = run(placeOf(names[0]!)!, placeOf(names.at(-1)!)!);
  if (!places) return { places: [], right: "a run along a row, a column or a diagonal" };
  if (places.some((place) => cellAt(canvas, place) === undefined))
    return { places: [], right: "a run that stays in the grids" };
  return { places };
};

/** A path with more faults than this has its first ones told. */
const mostFaults = 20;
/** Cells that a path may have: as many as the largest grid. */
const mostCells = 625;

/** Reads cells separated by spaces; `r1c1-r1c5` is a straight or diagonal run. No cell may come twice. */
export const readPath = (text: string, canvas: Canvas): PathText => {
  const places: Place[] = [];
  const tokens: { token: string; offset: number }[] = [];
  const faults: FaultInText[] = [];
  const seen = new Set<Cell>();
  for (const { 0: token, index: offset } of text.matchAll(/\S+/g)) {
    if (faults.length >= mostFaults || places.length > mostCells) break;
    const { places: read, right } = readToken(token, canvas);
    if (right) faults.push({ read: shown(token), right, offset });
    const twice = read.find((place) => seen.has(cellAt(canvas, place)!));
    if (twice) faults.push({ read: token, right: `each cell once; ${nameOf(twice)} comes twice`, offset });
    if (places.length + read.length > mostCells)
      faults.push({ read: token, right: `${mostCells} cells at most, as many as the largest grid has`, offset });
    for (const place of read) {
      seen.add(cellAt(canvas, place)!);
      places.push(place);
      tokens.push({ token, offset });
    }
  }
  return { places, tokens, faults };
};

/** Beside each other by side or corner. */
export const touch = (a: Place, b: Place): boolean =>
  Math.max(Math.abs(a.row - b.row), Math.abs(a.column - b.column)) === 1;
/** Beside each other by side. */
export const shareSide = (a: Place, b: Place): boolean => Math.abs(a.row - b.row) + Math.abs(a.column - b.column) === 1;

const areStraight = (a: Place, b: Place, c: Place): boolean =>
  b.row - a.row === c.row - b.row && b.column - a.column === c.column - b.column;

/** Writes the places as text, runs of three or more cells in a line shortened. */
export const writePath = (places: readonly Place[]): string => {
  const words: string[] = [];
  for (let k = 0; k < places.length; ) {
    let end = k + 1;
    if (end < places.length && touch(places[k]!, places[end]!))
      while (end + 1 < places.length && areStraight(places[end - 1]!, places[end]!, places[end + 1]!)) end++;
    const isRun = end < places.length && end - k >= 2;
    words.push(isRun ? `${nameOf(places[k]!)}-${nameOf(places[end]!)}` : nameOf(places[k]!));
    k = isRun ? end + 1 : k + 1;
  }
  return words.join(" ");
};
