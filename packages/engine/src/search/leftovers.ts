import { sumOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Equation } from "./equation.ts";
import type { Complete, Model } from "./model.ts";

/** Cells that add up to a known sum. */
export interface Fixed {
  readonly cells: readonly Cell[];
  readonly sum: number;
}

/** Leftovers of more cells say too little for what they cost. */
const mostCells = 4;
const mostHouses = 3;
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
  /** By house and cage: how many cells both have. */
  readonly shared: readonly Uint8Array[];
}

const familyOf = (houses: readonly Complete[], cages: readonly Fixed[], size: number): Family => {
  const cageOf = new Int16Array(size).fill(-1);
  for (const [index, { cells }] of cages.entries()) for (const cell of cells) cageOf[cell] = index;
  const shared = houses.map(({ cells }) => {
    const count = new Uint8Array(cages.length);
    for (const cell of cells) if (cageOf[cell]! >= 0) count[cageOf[cell]!]! += 1;
    return count;
  });
  return { houses, cages, shared };
};

/** How many cells are left when every cage is taken of which at least half, `shared` cells, lies in the union. */
const sizeLeft = (cellsInUnion: number, shared: Uint8Array, sizes: Uint8Array): number => {
  let size = cellsInUnion;
  for (let cage = 0; cage < sizes.length; cage++) {
    const over = sizes[cage]! - 2 * shared[cage]!;
    if (over <= 0) size += over;
  }
  return size;
};

/** What is left when whole cages are taken from a union of houses: cells inside without a cage, less cells outside. */
const leftover = (houses: readonly Complete[], shared: Uint8Array, cages: readonly Fixed[], size: number): Equation => {
  const weightOf = new Int8Array(size);
  let equals = 0;
  for (const { cells, digits } of houses) {
    for (const cell of cells) weightOf[cell] = 1;
    equals += sumOf(digits);
  }
  for (let index = 0; index < cages.length; index++) {
    const { cells, sum } = cages[index]!;
    if (cells.length > 2 * shared[index]!) continue;
    for (const cell of cells) weightOf[cell]! -= 1;
    equals -= sum;
  }
  const cells: Cell[] = [];
  const weights: number[] = [];
  for (let cell = 0; cell < size; cell++) {
    if (weightOf[cell] === 0) continue;
    cells.push(cell);
    weights.push(weightOf[cell]!);
  }
  return { cells, weights, equals };
};

const choose = (from: number, howMany: number): number =>
  howMany === 0 ? 1 : (choose(from, howMany - 1) * (from - howMany + 1)) / howMany;

/** The leftovers of every one, two or three houses of the family. */
const leftoversIn = ({ houses, cages, shared }: Family, size: number): Equation[] => {
  const upTo = [mostHouses, 2, 1].find((many) => choose(houses.length, many) <= mostUnions) ?? 0;
  const found: Equation[] = [];
  const sizes = Uint8Array.from(cages, ({ cells }) => cells.length);
  const sums = Array.from({ length: upTo + 1 }, () => new Uint8Array(cages.length));
  const grow = (chosen: readonly Complete[], from: number, cells: number): void => {
    const [before, now] = [sums[chosen.length]!, sums[chosen.length + 1]!];
    for (let next = from; next < houses.length; next++) {
      const more = shared[next]!;
      for (let cage = 0; cage < sizes.length; cage++) now[cage] = before[cage]! + more[cage]!;
      const union = [...chosen, houses[next]!];
      const inside = cells + houses[next]!.cells.length;
      if (sizeLeft(inside, now, sizes) <= mostCells) found.push(leftover(union, now, cages, size));
      if (union.length < upTo) grow(union, next + 1, inside);
    }
  };
  if (upTo > 0) grow([], 0, 0);
  return found;
};

/** Sums of few cells that follow from houses and cages, each once. */
export const leftoversOf = ({ complete, domains }: Model, cages: readonly Fixed[]): Equation[] => {
  if (cages.length === 0) return [];
  const apart = withoutOverlap(cages);
  const names = new Set(complete.flatMap(({ family }) => family ?? []));
  const families = [...names].map((name) =>
    familyOf(
      complete.filter(({ family }) => family === name),
      apart,
      domains.length,
    ),
  );
  const found = new Map<string, Equation>();
  for (const family of families)
    for (const equation of leftoversIn(family, domains.length)) found.set(equation.cells.join(), equation);
  return [...found.values()];
};
