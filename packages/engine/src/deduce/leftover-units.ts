import type { Board, House } from "../board/board.ts";
import { has } from "../board/digits.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { combinations } from "./combinations.ts";
import { type Unit, unitOf } from "./unit.ts";

/** As many houses of one sort as of another, and the few cells that lie in the ones only. */
export interface Leftover extends Unit {
  readonly plus: readonly House[];
  readonly minus: readonly House[];
  /** Cells of `plus` outside `minus`, and the other way. */
  readonly inside: readonly Cell[];
  readonly outside: readonly Cell[];
}

const mostHouses = 4;
/** More cells than this on both sides together are not compared in the head. */
const mostLeft = 8;

/** Rows, columns and regions of each grid, each sort by itself; houses that rules make are one sort more. */
const families = (board: Board): House[][] => {
  const sorts = new Map<string, House[]>();
  for (const house of board.houses)
    if (house.complete) {
      const sort = `${house.grid} ${house.shape}`;
      sorts.set(sort, [...(sorts.get(sort) ?? []), house]);
    }
  return [...sorts.values()];
};

/** Neighbours of one sort: one row, two rows that touch, and so on. */
const runsIn = (family: readonly House[]): House[][] =>
  Array.from({ length: Math.min(mostHouses, family.length - 1) }, (_, less) =>
    family.slice(less).map((_, k) => family.slice(k, k + less + 1)),
  ).flat();

const cellsOf = (houses: readonly House[]): Cell[] => houses.flatMap(({ cells }) => cells);
const areApart = (houses: readonly House[]): boolean => {
  const cells = cellsOf(houses);
  return new Set(cells).size === cells.length;
};

/** Houses of the other sort that lie for the most part in these, as many as these. */
const rivals = (
  houses: readonly House[],
  cells: ReadonlySet<Cell>,
  family: readonly House[],
): Iterable<readonly House[]> => {
  const near = family.filter((house) => {
    const shared = house.cells.filter((cell) => cells.has(cell)).length;
    return 2 * shared >= house.cells.length && !houses.includes(house);
  });
  return near.length < houses.length ? [] : combinations(near, houses.length);
};

/** By digit, how often it stands in the cells inside more than in those outside. */
const surplusOf = (plus: readonly House[], minus: readonly House[]): number[] =>
  Array.from({ length: 32 }, (_, digit) => {
    const times = (houses: readonly House[]): number => houses.filter(({ digits }) => has(digits, digit)).length;
    return times(plus) - times(minus);
  });

/** What the cells inside have and those outside don't comes to the surplus: a count of each digit along them. */
const balanced = (
  inside: readonly Cell[],
  outside: readonly Cell[],
  surplus: readonly number[],
  owner: string,
): Term => {
  const cells = [...inside, ...outside];
  const next = (state: string | number, digit: number, index: number): string | undefined => {
    const counts = String(state).split(",").map(Number);
    counts[digit]! += index < inside.length ? 1 : -1;
    return index >= inside.length && counts[digit]! < 0 ? undefined : counts.join();
  };
  const start = surplus.map((times) => -times).join();
  return { term: "automaton", owner, cells, start, next, ok: (state) => !/[1-9]/.test(String(state)) };
};

const leftoverOf = (board: Board, plus: readonly House[], minus: readonly House[]): Leftover | undefined => {
  const [taken, given] = [cellsOf(minus), cellsOf(plus)];
  const inside = given.filter((cell) => !taken.includes(cell));
  const outside = taken.filter((cell) => !given.includes(cell));
  const size = inside.length + outside.length;
  if (inside.length === 0 || outside.length === 0 || size > mostLeft || !areApart(plus) || !areApart(minus))
    return undefined;
  const surplus = surplusOf(plus, minus);
  const owner = plus[0]!.id;
  const isEven = surplus.every((times) => times === 0);
  const term: Term = isEven
    ? { term: "same-digits", owner, cells: [...inside, ...outside], half: inside.length }
    : balanced(inside, outside, surplus, owner);
  const [more, less] = [plus.map(({ id }) => id), minus.map(({ id }) => id)];
  const unit = unitOf(board, { rules: [], terms: [term], counts: [{ plus: more, minus: less }] });
  return { ...unit, houses: [...more, ...less], plus, minus, inside, outside };
};

const keyOf = (plus: readonly House[], minus: readonly House[]): string =>
  [plus, minus]
    .map((houses) => houses.map(({ id }) => id).join(" "))
    .sort()
    .join(" | ");

/** Houses whose cells nearly coincide, in the order of how little is left over. */
export const leftoverUnits = remembered((board: Board): readonly Leftover[] => {
  const sorts = families(board);
  const found = new Map<string, Leftover>();
  for (const family of sorts)
    for (const plus of runsIn(family)) {
      const cells = new Set(cellsOf(plus));
      for (const others of sorts)
        for (const minus of rivals(plus, cells, others)) {
          const key = keyOf(plus, minus);
          const leftover = found.has(key) ? undefined : leftoverOf(board, plus, minus);
          if (leftover) found.set(key, leftover);
        }
    }
  return [...found.values()].sort((a, b) => a.cells.length - b.cells.length);
});
