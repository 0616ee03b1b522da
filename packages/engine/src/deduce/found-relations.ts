import type { Board } from "../board/board.ts";
import { listOf, sumOf } from "../board/digits.ts";
import { keyOfRelated, type Related } from "../board/related.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { clueUnits, domainsOfUnit } from "./clue-units.ts";
import { combinations } from "./combinations.ts";
import type { Reasons } from "./deduction.ts";
import { fixedSumsOf } from "./fixed-sums.ts";
import { leftoverUnits } from "./leftover-units.ts";
import { sumUnits } from "./sum-units.ts";
import type { Unit } from "./unit.ts";

/** A relation that houses and clues give by themselves, whatever the digits are. */
export interface FoundRelation {
  readonly related: Related;
  readonly because: Reasons;
}

const reasons = (houses: readonly string[], rules: readonly string[], counts?: Reasons["counts"]): Reasons => ({
  facts: new Map(),
  spots: [],
  relations: [],
  houses,
  rules,
  ...(counts ? { counts } : {}),
});

/** One cell in and one out: those two are the same. */
const twins = (board: Board): FoundRelation[] =>
  leftoverUnits(board)
    .filter(({ inside, outside }) => inside.length === 1 && outside.length === 1)
    .map(({ inside, outside, houses, counts }) => ({
      related: { relation: "same", cells: [inside[0]!, outside[0]!] },
      because: reasons(houses, [], counts),
    }));

/** The sum that a clue fixes, where it fixes one. */
const sumFixedBy = (board: Board, id: string): number | undefined => {
  const sums = fixedSumsOf(board.rule(id)!);
  return sums.length === 1 ? sums[0]!.sum : undefined;
};

/** What the sums leave of houses for two cells inside. */
const restsOf = (board: Board): FoundRelation[] =>
  sumUnits(board).flatMap(({ cells, houses, rules, counts }): FoundRelation[] => {
    const [{ plus } = { plus: [] }] = counts ?? [];
    const inside = plus.flatMap((id) => board.house(id)!.cells);
    const sums = rules.map((id) => sumFixedBy(board, id));
    if (cells.length !== 2 || !cells.every((cell) => inside.includes(cell)) || sums.includes(undefined)) return [];
    const total = plus.reduce((sum, id) => sum + sumOf(board.house(id)!.digits), 0);
    const is = total - sums.reduce<number>((sum, each) => sum + each!, 0);
    return [{ related: { relation: "sum", cells, is }, because: reasons(houses, rules, counts) }];
  });

type Pairs = readonly (readonly [number, number])[];

/** The pairs of digits that a clue on two cells allows, in the order of its cells. */
const pairsOf = (board: Board, unit: Unit): Pairs => {
  const prober = unit.alone.prober(domainsOfUnit(board, unit));
  return listOf(prober.digits[0]!).flatMap((digit) =>
    listOf(prober.probe(0, digit).digits[1]!).map((other): [number, number] => [digit, other]),
  );
};

const turned = (pairs: Pairs): Pairs => pairs.map(([x, y]) => [y, x]);

const relationIn = (pairs: Pairs, cells: readonly [Cell, Cell]): Related | undefined => {
  const [a, c] = cells;
  if (pairs.length === 0) return undefined;
  if (pairs.every(([x, y]) => x === y)) return { relation: "same", cells };
  if (pairs.every(([x, y]) => x < y)) return { relation: "less", cells };
  if (pairs.every(([x, y]) => x > y)) return { relation: "less", cells: [c, a] };
  if (pairs.every(([x, y]) => (x - y) % 2 === 0)) return { relation: "parity", cells, is: "same" };
  return pairs.every(([x, y]) => (x - y) % 2 !== 0) ? { relation: "parity", cells, is: "different" } : undefined;
};

/** More clues on two cells than this are not put together by twos. */
const mostPairs = 60;

/** What two clues that share a cell say of their other two. */
const acrossTwo = (board: Board): FoundRelation[] => {
  const units = clueUnits(board).filter(({ cells }) => cells.length === 2);
  if (units.length > mostPairs) return [];
  const known = new Map(units.map((unit) => [unit, pairsOf(board, unit)]));
  return [...combinations(units, 2)].flatMap((two): FoundRelation[] => {
    const [one, other] = two as [Unit, Unit];
    const middle = one.cells.find((cell) => other.cells.includes(cell));
    const [a, c] = [one, other].map(({ cells }) => cells.find((cell) => cell !== middle)!);
    if (middle === undefined || a === c) return [];
    const first = one.cells[0] === a ? known.get(one)! : turned(known.get(one)!);
    const second = other.cells[0] === middle ? known.get(other)! : turned(known.get(other)!);
    const through = first.flatMap(([x, y]) => second.flatMap(([z, w]) => (y === z ? [[x, w] as const] : [])));
    const related = relationIn(through, [a!, c!]);
    return related ? [{ related, because: reasons([], [...one.rules, ...other.rules]) }] : [];
  });
};

/** Relations that one thought about houses and clues gives, each once, with the fewest reasons. */
export const foundRelations = remembered((board: Board): readonly FoundRelation[] => {
  const size = ({ because }: FoundRelation): number => because.houses.length + because.rules.length;
  const all = [...twins(board), ...restsOf(board), ...acrossTwo(board)].sort((a, b) => size(a) - size(b));
  const firsts = new Map<string, FoundRelation>();
  for (const found of all) if (!firsts.has(keyOfRelated(found.related))) firsts.set(keyOfRelated(found.related), found);
  return [...firsts.values()];
});
