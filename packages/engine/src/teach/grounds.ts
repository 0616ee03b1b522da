import type { Random } from "../random.ts";

/** A board on which to look for a lesson: its grids and the rules that need no filling to be written. */
export interface Ground {
  readonly grids: string;
  readonly rules?: string;
  /** So many boards of it are looked at, where that is not as many as of others. */
  readonly most?: number;
  /** Draws clues that a filling obeys, a line of the file each; `digit` by row and column, both from 1. */
  readonly clues?: (random: Random, size: number, digit: (row: number, column: number) => number) => readonly string[];
}

const name = (row: number, column: number): string => `r${row}c${column}`;

/** Cages of two or three cells in a row or column, none of which touch the same cell. */
const cages: Ground["clues"] = (random, size, digit) => {
  const taken = new Set<string>();
  const all = Array.from({ length: 3 * size }, () => {
    const [length, isRow] = [2 + random.below(2), random.below(2) === 0];
    const [along, across] = [1 + random.below(size - length + 1), 1 + random.below(size)];
    return Array.from({ length }, (_, k) => (isRow ? [across, along + k] : [along + k, across]) as [number, number]);
  });
  return all.flatMap((cells) => {
    const names = cells.map(([row, column]) => name(row, column));
    const digits = cells.map(([row, column]) => digit(row, column));
    if (names.some((each) => taken.has(each)) || new Set(digits).size < digits.length) return [];
    for (const each of names) taken.add(each);
    return [`cage: { cells: ${names.join(" ")}, sum: ${digits.reduce((sum, each) => sum + each, 0)} }`];
  });
};

/** The grounds in the order in which they are tried, the smallest first. */
export const grounds: readonly Ground[] = [
  { grids: "{ id: main, size: 4 }" },
  { grids: "{ id: main, size: 6, regions: 'aaaaab abbbbb ccdddd ccccdd eeefff eeefff' }" },
  { grids: "{ id: main, size: 6 }" },
  { grids: "{ id: main, size: 6 }", clues: cages },
  { grids: "{ id: main, size: 6 }", rules: "anti-knight" },
  { grids: "{ id: main, size: 6, regions: 'aaabbb aabccc abbccc dddeee dddeee ffffff' }" },
  { grids: "{ id: main, size: 6, regions: 'aaaabb cccabb dccabb dceeeb dcefff ddefff' }" },
  { grids: "{ id: large, called: the large grid, size: 6 }, { id: small, called: the small grid, size: 4, at: r5c2 }" },
  { grids: "{ id: main, size: 9 }", most: 150 },
];
