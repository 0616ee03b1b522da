import { listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Equation } from "./equation.ts";
import type { Complete } from "./model.ts";

/** Cells that add up to a known sum. */
interface Fixed {
  readonly cells: readonly Cell[];
  readonly sum: number;
}

const mostHouses = Number((globalThis as any).process?.env.MH ?? 3);
const mostCells = Number((globalThis as any).process?.env.MC ?? 6);
const most = Number((globalThis as any).process?.env.ML ?? 100);

const disjoint = (a: ReadonlySet<Cell>, b: readonly Cell[]): boolean => !b.some((cell) => a.has(cell));

/** What is left when whole cages are taken from a union of houses: cells inside without a cage, less cells outside. */
const leftover = (houses: readonly Complete[], cages: readonly Fixed[]): Equation => {
  const inside = new Set(houses.flatMap(({ cells }) => cells));
  const covered = new Set<Cell>();
  const outside: Cell[] = [];
  let equals = houses.reduce((sum, { digits }) => sum + listOf(digits).reduce((a, b) => a + b, 0), 0);
  for (const { cells, sum } of cages) {
    const out = cells.filter((cell) => !inside.has(cell));
    if (2 * out.length > cells.length || !disjoint(covered, cells)) continue;
    for (const cell of cells) covered.add(cell);
    outside.push(...out);
    equals -= sum;
  }
  const left = [...inside].filter((cell) => !covered.has(cell));
  return { cells: [...left, ...outside], weights: [...left.map(() => 1), ...outside.map(() => -1)], equals };
};

const unions = (houses: readonly Complete[], upTo: number): Complete[][] => {
  const grow = (chosen: Complete[], from: number): Complete[][] =>
    chosen.length === upTo
      ? []
      : houses.slice(from).flatMap((house, k) => {
          if (!disjoint(new Set(chosen.flatMap(({ cells }) => cells)), house.cells)) return [];
          const next = [...chosen, house];
          return [next, ...grow(next, from + k + 1)];
        });
  return grow([], 0);
};

/** Sums of few cells that follow from houses and cages; the smallest first. */
export const leftoversOf = (complete: readonly Complete[], cages: readonly Fixed[]): Equation[] => {
  if (cages.length === 0) return [];
  const found = new Map<string, Equation>();
  for (const family of new Set(complete.map(({ family }) => family)))
    for (const union of unions(
      complete.filter((set) => set.family === family),
      mostHouses,
    )) {
      const equation = leftover(union, cages);
      if (equation.cells.length <= mostCells) found.set([...equation.cells].sort((a, b) => a - b).join(), equation);
    }
  return [...found.values()].sort((a, b) => a.cells.length - b.cells.length).slice(0, most);
};
