import type { Cell } from "../puzzle/canvas.ts";
import type { Premises } from "./premises.ts";
import type { PreparedHouse, PreparedRule } from "./prepared.ts";

type Counts = Premises["counts"][number];

/** A count whose leftover has more cells than this says little. */
const mostLeft = 4;

const disjoint = (cells: readonly Cell[], taken: ReadonlySet<Cell>): boolean => cells.every((cell) => !taken.has(cell));

/** Rules to take from these houses, none of whose cells come twice: those with more than `share` of their cells inside. */
const rulesWithin = (
  houses: readonly PreparedHouse[],
  rules: readonly PreparedRule[],
  share: number,
): PreparedRule[] => {
  const inside = new Set(houses.flatMap(({ cells }) => cells));
  const taken = new Set<Cell>();
  return rules.filter(({ cells }) => {
    const within = cells.filter((cell) => inside.has(cell)).length;
    if (within < share * cells.length || !disjoint(cells, taken)) return false;
    for (const cell of cells) taken.add(cell);
    return true;
  });
};

/** Every set of up to `most` houses that share no cell. */
const apart = (houses: readonly PreparedHouse[], most: number): PreparedHouse[][] => {
  if (most === 0 || houses.length === 0) return [[]];
  const [first, ...rest] = houses as [PreparedHouse, ...PreparedHouse[]];
  const others = rest.filter(({ cells }) => disjoint(cells, new Set(first.cells)));
  return [...apart(rest, most), ...apart(others, most - 1).map((set) => [first, ...set])];
};

const sizeLeft = ({ plus, minus }: Counts): number => {
  const inside = new Set(plus.flatMap(({ cells }) => cells));
  const taken = minus.flatMap(({ cells }) => cells);
  return inside.size + taken.length - 2 * taken.filter((cell) => inside.has(cell)).length;
};

/**
 * Counts that nobody named but that come to little: up to three listed houses without the listed fixed sums in them, or
 * mostly in them. They say nothing that the houses and rules don't; a search that knows them is many times shorter.
 */
export const foundCounts = (houses: readonly PreparedHouse[], rules: readonly PreparedRule[]): Counts[] => {
  const complete = houses.filter((house) => house.complete);
  const summed = complete.length === 0 ? [] : rules.filter((rule) => rule.total() !== undefined);
  if (summed.length < 2) return [];
  const sets = apart(complete, complete.length > 9 ? 1 : 3).filter((set) => set.length > 0);
  return sets
    .flatMap((plus) => [1, 0.51].map((share) => ({ plus, minus: rulesWithin(plus, summed, share) })))
    .filter((counts) => counts.minus.length > 0 && sizeLeft(counts) > 0 && sizeLeft(counts) <= mostLeft);
};
