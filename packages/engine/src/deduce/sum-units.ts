import type { Board, House } from "../board/board.ts";
import { sumOf } from "../board/digits.ts";
import { remembered } from "../board/remembered.ts";
import { combinations } from "./combinations.ts";
import { type FixedSum, fixedSumsOf } from "./fixed-sums.ts";
import { type Unit, unitOf } from "./unit.ts";

const fixedSums = (board: Board): FixedSum[] =>
  board.rules.filter(({ wholeGrid, leftOut }) => !wholeGrid && !leftOut).flatMap(fixedSumsOf);

/** Up to three houses of one sort of one grid that share no cell. */
const houseSets = (board: Board): (readonly House[])[] => {
  const sorts = new Map<string, House[]>();
  for (const house of board.houses)
    if (house.complete && house.grid !== undefined && house.shape !== "other")
      sorts.set(`${house.grid} ${house.shape}`, [...(sorts.get(`${house.grid} ${house.shape}`) ?? []), house]);
  return [...sorts.values()].flatMap((houses) =>
    [1, 2, 3].flatMap((size) =>
      size > houses.length ? [] : size < 3 ? [...combinations(houses, size)] : runsOf(houses, size),
    ),
  );
};
const runsOf = (houses: readonly House[], size: number): House[][] =>
  houses.slice(0, houses.length - size + 1).map((_, k) => houses.slice(k, k + size));

/** More cells than this are not added up in the head. */
const mostLeft = 4;
const mostCrossing = 5;

const subsets = <T>(list: readonly T[]): (readonly T[])[] =>
  [...Array(list.length + 1).keys()].flatMap((size) => [...combinations(list, size)]);

const areApart = (sums: readonly FixedSum[]): boolean => {
  const cells = sums.flatMap((sum) => sum.cells);
  return new Set(cells).size === cells.length;
};

/** What the sums leave over of these houses, counting some of the sums that reach outside. */
const leftovers = (board: Board, houses: readonly House[], sums: readonly FixedSum[]): Unit[] => {
  const inside = new Set(houses.flatMap(({ cells }) => cells));
  const whole = sums.filter(({ cells }) => cells.every((cell) => inside.has(cell)));
  const crossing = sums.filter(
    ({ cells }) => cells.some((cell) => inside.has(cell)) && !whole.some((sum) => sum.cells === cells),
  );
  if (crossing.length > mostCrossing || !areApart(whole)) return [];
  const total = houses.reduce((all, { digits }) => all + sumOf(digits), 0);
  return subsets(crossing).flatMap((some): Unit[] => {
    const counted = [...whole, ...some];
    if (counted.length === 0 || !areApart(counted)) return [];
    const covered = new Set(counted.flatMap(({ cells }) => cells));
    const left = [...inside].filter((cell) => !covered.has(cell));
    const out = [...covered].filter((cell) => !inside.has(cell));
    if (left.length + out.length === 0 || left.length + out.length > mostLeft) return [];
    const rules = counted.map(({ rule }) => rule);
    const names = houses.map(({ id }) => id);
    const equals = total - counted.reduce((all, { sum }) => all + sum, 0);
    const weights = [...left.map(() => 1), ...out.map(() => -1)];
    return [
      {
        ...unitOf(board, {
          rules,
          terms: [{ term: "sum", owner: rules[0]!, cells: [...left, ...out], weights, equals }],
          counts: [{ plus: names, minus: rules }],
        }),
        houses: names,
      },
    ];
  });
};

/** The few cells that sums leave over of one to three houses, or have too many: what these add up to. */
export const sumUnits = remembered((board: Board): readonly Unit[] => {
  const sums = fixedSums(board);
  return sums.length === 0 ? [] : houseSets(board).flatMap((houses) => leftovers(board, houses, sums));
});
