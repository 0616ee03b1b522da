import { listOf, sumOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Constraint, type Domains, isSettled } from "./constraint.ts";
import type { Weighted } from "./linear.ts";
import type { Counted, Premises } from "./premises.ts";
import type { PreparedHouse } from "./prepared.ts";

type Counts = Premises["counts"][number];

/** What is left over of a count: how often each cell stands on the one side more than on the other, and the sum. */
export interface Leftover extends Weighted {
  readonly total: number;
  /** By digit, of houses alone: how often it stands in the weighted cells, counted with their weights. */
  readonly times?: Int32Array;
}

const isHouse = (counted: Counted): counted is PreparedHouse => "complete" in counted;

/** What all cells of it add up to; undefined where that is not fixed. */
const totalOf = (counted: Counted): number | undefined => {
  if (!isHouse(counted)) return counted.total();
  return counted.complete ? sumOf(counted.digits) : undefined;
};

const weightsOf = ({ plus, minus }: Counts): Weighted => {
  const weights = new Map<Cell, number>();
  const add = (by: number) => (counted: Counted) => {
    for (const cell of counted.cells) weights.set(cell, (weights.get(cell) ?? 0) + by);
  };
  plus.forEach(add(1));
  minus.forEach(add(-1));
  const left = [...weights].filter(([, weight]) => weight !== 0);
  return { cells: left.map(([cell]) => cell), weights: left.map(([, weight]) => weight) };
};

const timesOf = ({ plus, minus }: { plus: readonly PreparedHouse[]; minus: readonly PreparedHouse[] }): Int32Array => {
  const times = new Int32Array(32);
  for (const { digits } of plus) for (const digit of listOf(digits)) times[digit]!++;
  for (const { digits } of minus) for (const digit of listOf(digits)) times[digit]!--;
  return times;
};

/** What a count comes to, worked out from the plain definitions; undefined where something in it has no fixed total. */
export const leftoverOf = ({ plus, minus }: Counts): Leftover | undefined => {
  const totals = [...plus.map(totalOf), ...minus.map((counted) => -(totalOf(counted) ?? Number.NaN))];
  const total = totals.reduce<number>((sum, each) => sum + (each ?? Number.NaN), 0);
  if (Number.isNaN(total)) return undefined;
  const left = { ...weightsOf({ plus, minus }), total };
  return plus.every(isHouse) && minus.every(isHouse) ? { ...left, times: timesOf({ plus, minus }) } : left;
};

/** The least and the most that the cells of one sign can add to a digit's count. */
const boundsOf = ({ cells, weights }: Weighted, digit: number, at: Int32Array): [number, number] => {
  let least = 0;
  let most = 0;
  for (const [k, cell] of cells.entries()) {
    const here = at[cell]!;
    if ((here & (1 << digit)) === 0) continue;
    if (weights[k]! > 0 || isSettled(here)) most += weights[k]!;
    if (weights[k]! < 0 || isSettled(here)) least += weights[k]!;
  }
  return [least, most];
};

/** Each open cell must have (or, `without`, must not have) the digit where that raises the count; else the other way. */
const push = ({ cells, weights }: Weighted, digit: number, up: boolean, { at, keep }: Domains): boolean =>
  cells.every((cell, k) => {
    if ((at[cell]! & (1 << digit)) === 0 || isSettled(at[cell]!)) return true;
    return keep(cell, weights[k]! > 0 === up ? 1 << digit : ~(1 << digit));
  });

/** Each digit stands in the cells, counted with their weights, exactly so many times. */
export const balance = (of: Weighted, times: Int32Array): Constraint => {
  const narrowDigit = (digit: number, domains: Domains): boolean => {
    const [least, most] = boundsOf(of, digit, domains.at);
    const is = times[digit]!;
    if (is < least || is > most) return false;
    if (least === most) return true;
    if (is === most) return push(of, digit, true, domains);
    return is !== least || push(of, digit, false, domains);
  };
  const narrow = (domains: Domains): boolean => {
    for (let digit = 0; digit < 32; digit++) if (!narrowDigit(digit, domains)) return false;
    return true;
  };
  return { cells: of.cells, effort: 1, narrow };
};
