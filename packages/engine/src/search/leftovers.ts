import { listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Equation } from "./equation.ts";
import type { Complete } from "./model.ts";

/** Cells that add up to a known sum. */
export interface Fixed {
  readonly cells: readonly Cell[];
  readonly sum: number;
}

/** Leftovers of more cells say too little for what they cost. */
const mostCells = Number((globalThis as any).process?.env.MC ?? 6);
const mostHouses = Number((globalThis as any).process?.env.MH ?? 3);
/** Where three houses at a time would be more unions than this, two are taken, or one. */
const mostUnions = 700;

/** No cell in two of them. */
const withoutOverlap = (cages: readonly Fixed[]): Fixed[] => {
  const taken = new Set<Cell>();
  return cages.filter(({ cells }) => {
    const free = !cells.some((cell) => taken.has(cell));
    if (free) for (const cell of cells) taken.add(cell);
    return free;
  });
};

interface Family {
  readonly houses: readonly Complete[];
  readonly cages: readonly Fixed[];
  /** By house and cage: the cells that both have. */
  readonly shared: readonly Uint8Array[];
}

const familyOf = (houses: readonly Complete[], cages: readonly Fixed[]): Family => ({
  houses,
  cages,
  shared: houses.map(({ cells }) => {
    const inside = new Set(cells);
    return Uint8Array.from(cages, (cage) => cage.cells.filter((cell) => inside.has(cell)).length);
  }),
});

/** A cage counts with a union of houses when at least half of it lies inside. */
const counts = (shared: number, { cells }: Fixed): boolean => shared > 0 && 2 * shared >= cells.length;

const sharedWith = ({ shared }: Family, union: readonly number[], cage: number): number =>
  union.reduce((sum, house) => sum + shared[house]![cage]!, 0);

/** How many cells the union would leave over. */
const sizeOf = (family: Family, union: readonly number[]): number => {
  let size = 0;
  for (const house of union) size += family.houses[house]!.cells.length;
  for (let cage = 0; cage < family.cages.length; cage++) {
    const shared = sharedWith(family, union, cage);
    const { length } = family.cages[cage]!.cells;
    if (shared > 0 && 2 * shared >= length) size += length - 2 * shared;
  }
  return size;
};

/** What is left when whole cages are taken from a union of houses: cells inside without a cage, less cells outside. */
const leftover = (family: Family, union: readonly number[]): Equation => {
  const houses = union.map((house) => family.houses[house]!);
  const cages = family.cages.filter((cage, index) => counts(sharedWith(family, union, index), cage));
  const inside = new Set(houses.flatMap(({ cells }) => cells));
  const covered = new Set(cages.flatMap(({ cells }) => cells));
  const left = [...inside].filter((cell) => !covered.has(cell));
  const outside = [...covered].filter((cell) => !inside.has(cell));
  const total = houses.flatMap(({ digits }) => listOf(digits)).reduce((sum, digit) => sum + digit, 0);
  return {
    cells: [...left, ...outside],
    weights: [...left.map(() => 1), ...outside.map(() => -1)],
    equals: cages.reduce((rest, { sum }) => rest - sum, total),
  };
};

const choose = (from: number, howMany: number): number =>
  howMany === 0 ? 1 : (choose(from, howMany - 1) * (from - howMany + 1)) / howMany;

/** Every one, two or three of the houses, by index. */
function* unions(houses: number): Generator<readonly number[]> {
  const upTo = [mostHouses, 2, 1].find((many) => choose(houses, many) <= mostUnions) ?? 0;
  function* grow(chosen: readonly number[]): Generator<readonly number[]> {
    for (let next = (chosen.at(-1) ?? -1) + 1; next < houses; next++) {
      yield [...chosen, next];
      if (chosen.length + 1 < upTo) yield* grow([...chosen, next]);
    }
  }
  if (upTo > 0) yield* grow([]);
}

/** Sums of few cells that follow from houses and cages. */
export const leftoversOf = (complete: readonly Complete[], cages: readonly Fixed[]): Equation[] => {
  if (cages.length === 0) return [];
  const apart = withoutOverlap(cages);
  const found = new Map<string, Equation>();
  for (const name of new Set(complete.flatMap(({ family }) => family ?? []))) {
    const family = familyOf(complete.filter((set) => set.family === name), apart);
    for (const union of unions(family.houses.length)) {
      if (sizeOf(family, union) > mostCells) continue;
      const equation = leftover(family, union);
      found.set([...equation.cells].sort((a, b) => a - b).join(), equation);
    }
  }
  return [...found.values()];
};
