import { type Cell, pairsApart } from "../puzzle/canvas.ts";
import type { Grid } from "../puzzle/puzzle.ts";
import type { WholeGridBody } from "./bodies/whole-grid.ts";
import { cellsIn, gridsNamed } from "./cells.ts";
import type { Bound, EdgeMark, Faulty, Setting } from "./contract.ts";

type Pair = readonly [Cell, Cell];

/** A rule that binds every two cells of its grids together that lie in some way to each other. */
export interface Everywhere extends Bound {
  readonly pairs: readonly Pair[];
  /** Where it holds, to begin a sentence with; empty where that goes without saying. */
  readonly where: string;
}

export const sides = [
  [0, 1],
  [1, 0],
] as const;

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

/** "In the north grid", "Anywhere on the board", or nothing where there is but one grid. */
export const whereOf = (all: readonly Grid[], some: readonly Grid[], everywhere: string): string => {
  if (all.length === 1) return "";
  return all.length === some.length ? everywhere : `In ${listed(some.map(({ called }) => called))}`;
};

/** The sentence with the place where it holds before it. */
export const placed = (where: string, sentence: string): string =>
  where === "" ? sentence : `${where}, ${sentence[0]!.toLowerCase()}${sentence.slice(1)}`;

/** Every two cells of the named grids together that are one of these steps down and right apart. */
export const everywhere = (
  { grids: ids }: WholeGridBody,
  setting: Setting,
  steps: readonly (readonly [number, number])[],
): Everywhere | Faulty => {
  const grids = gridsNamed(setting, ids);
  if ("faults" in grids) return grids;
  const inside = new Set(cellsIn(setting, grids));
  const pairs = pairsApart(setting.canvas, steps).filter((pair) => pair.every((cell) => inside.has(cell)));
  return { cells: [], pairs, where: whereOf(setting.grids, grids, "Anywhere on the board") };
};

/** Every two cells of the named grids together that share a side and bear no such mark. */
export const withoutMark = (body: WholeGridBody, setting: Setting, mark: EdgeMark): Everywhere | Faulty => {
  const all = everywhere(body, setting, sides);
  if ("faults" in all) return all;
  const marked = new Set(setting.marked(mark).map(([a, b]) => `${Math.min(a, b)} ${Math.max(a, b)}`));
  return { ...all, pairs: all.pairs.filter(([a, b]) => !marked.has(`${a} ${b}`)) };
};
