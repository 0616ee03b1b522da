import { attempt, cellsOf, type FilledCell } from "./chance-cells.ts";
import type { Filled } from "./kind-cases.ts";
import type { Random } from "./random.ts";

interface Wanted {
  readonly least: number;
  readonly most: number;
  /** Of the digits so far, the new one last. */
  readonly fits?: (digits: readonly number[]) => boolean;
  /** Of all digits. */
  readonly whole?: (digits: readonly number[], cells: readonly FilledCell[]) => boolean;
}

export const areTouching = (a: FilledCell, b: FilledCell): boolean =>
  Math.max(Math.abs(a.row - b.row), Math.abs(a.column - b.column)) === 1;

export const digitsOf = (cells: readonly FilledCell[]): number[] => cells.map(({ digit }) => digit);

const grown = (
  random: Random,
  board: Filled,
  length: number,
  fits: (digits: readonly number[]) => boolean,
): FilledCell[] => {
  const all = cellsOf(board);
  const path = [random.pick(all)];
  while (path.length < length) {
    const next = random
      .shuffled(all)
      .find((cell) => !path.includes(cell) && areTouching(path.at(-1)!, cell) && fits(digitsOf([...path, cell])));
    if (!next) break;
    path.push(next);
  }
  return path;
};

/** A path of touching cells with the wanted digits; undefined where chance found none. */
export const pathWhere = (
  random: Random,
  board: Filled,
  { least, most, fits = () => true, whole = () => true }: Wanted,
): FilledCell[] | undefined =>
  attempt(200, () => {
    const path = grown(random, board, least + random.below(most - least + 1), fits);
    return path.length >= least && whole(digitsOf(path), path) ? path : undefined;
  });

/** The last two of the digits, where there are two, hold. */
export const lastTwo =
  (holds: (before: number, last: number) => boolean) =>
  (digits: readonly number[]): boolean =>
    digits.length < 2 || holds(digits.at(-2)!, digits.at(-1)!);
