import { type Digits, listOf } from "../board/digits.ts";
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

const sumOf = (digits: Digits): number => listOf(digits).reduce((sum, digit) => sum + digit, 0);

interface Family {
  readonly houses: readonly Complete[];
  readonly cages: readonly Fixed[];
  /** By house and cage: how many cells both have. */
  readonly shared: readonly Uint8Array[];
}

const familyOf = (houses: readonly Complete[], cages: readonly Fixed[], size: number): Family => {
  const inside = new Uint8Array(size);
  const shared = houses.map(({ cells }) => {
    inside.fill(0);
    for (const cell of cells) inside[cell] = 1;
    return Uint8Array.from(cages, (cage) => cage.cells.reduce((count, cell) => count + inside[cell]!, 0));
  });
  return { houses, cages, shared };
};

/** How many cells are left when every cage is taken of which at least half, `shared` cells, lies in the union. */
const sizeLeft = (cellsInUnion: number, shared: Uint8Array, cages: readonly Fixed[]): number => {
  let size = cellsInUnion;
  for (let cage = 0; cage < cages.length; cage++) {
    const over = cages[cage]!.cells.length - 2 * shared[cage]!;
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
  for (const [index, cage] of cages.entries()) {
    if (cage.cells.length > 2 * shared[index]!) continue;
    for (const cell of cage.cells) weightOf[cell]! -= 1;
    equals -= cage.sum;
  }
  const cells: Cell[] = [];
  for (let cell = 0; cell < size; cell++) if (weightOf[cell] !== 0) cells.push(cell);
  return { cells, weights: cells.map((cell) => weightOf[cell]!), equals };
};

const choose = (from: number, howMany: number): number =>
  howMany === 0 ? 1 : (choose(from, howMany - 1) * (from - howMany + 1)) / howMany;

/** The leftovers of every one, two or three houses of the family. */
const leftoversIn = ({ houses, cages, shared }: Family, size: number): Equation[] => {
  const upTo = [mostHouses, 2, 1].find((many) => choose(houses.length, many) <= mostUnions) ?? 0;
  const found: Equation[] = [];
  const sums = Array.from({ length: upTo + 1 }, () => new Uint8Array(cages.length));
  const grow = (chosen: readonly Complete[], from: number, cells: number): void => {
    const [before, now] = [sums[chosen.length]!, sums[chosen.length + 1]!];
    for (let next = from; next < houses.length; next++) {
      for (let cage = 0; cage < cages.length; cage++) now[cage] = before[cage]! + shared[next]![cage]!;
      const union = [...chosen, houses[next]!];
      const inside = cells + houses[next]!.cells.length;
      if (sizeLeft(inside, now, cages) <= mostCells) found.push(leftover(union, now, cages, size));
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
