import { count, type Digits, listOf, only } from "../src/board/digits.ts";
import type { Cell } from "../src/puzzle/canvas.ts";
import { type Check, fillings } from "./enumerate.ts";
import type { Random } from "./random.ts";

/** So many assignments are enumerated one by one. */
const most = 6000;
const trials = 8;

/** Every assignment of the cells that fulfils the checks, as text. */
export const assignmentsBy = (cells: readonly Cell[], domains: readonly Digits[], checks: readonly Check[]): string[] =>
  [...fillings(cells, domains, checks)].map((digits) => cells.map((cell) => digits[cell]).join()).sort();

const ways = (cells: readonly Cell[], domains: readonly Digits[]): number =>
  cells.reduce((product, cell) => product * count(domains[cell]!), 1);

/** Around one filling: its own digits, and others in random cells as long as few enough assignments are left. */
const around = (
  cells: readonly Cell[],
  all: readonly Digits[],
  filling: ArrayLike<number>,
  random: Random,
): Digits[] => {
  const domains = [...all];
  for (const cell of cells) domains[cell] = only(filling[cell]!);
  for (const cell of random.shuffled([...cells, ...cells, ...cells])) {
    const digit = random.pick(listOf(all[cell]!));
    const wider = domains.with(cell, (domains[cell]! | (1 << digit)) as Digits);
    if (ways(cells, wider) <= most) domains[cell] = wider[cell]!;
  }
  return domains;
};

/** The whole domains where they are small enough; else some smaller ones, around solutions and around random fillings. */
export const restrictedAround = (
  cells: readonly Cell[],
  domains: readonly Digits[],
  solutions: readonly ArrayLike<number>[],
  random: Random,
): (readonly Digits[])[] => {
  if (ways(cells, domains) <= most) return [domains];
  const chance = (): number[] => domains.map((digits) => random.pick(listOf(digits)));
  return Array.from({ length: trials }, (_, k) =>
    around(cells, domains, k % 2 === 0 && solutions.length > 0 ? random.pick(solutions) : chance(), random),
  );
};
