import { type Digits, max, min } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Reading } from "./reading.ts";

/** Cells with a weight each. */
export interface Weighted {
  readonly cells: readonly Cell[];
  readonly weights: readonly number[];
}

/** By place: the least and the greatest that the cells before it can add up to. */
const rangesOf = ({ cells, weights }: Weighted, domains: Int32Array) => {
  const least = [0];
  const most = [0];
  for (const [place, cell] of cells.entries()) {
    const ends = [min(domains[cell] as Digits), max(domains[cell] as Digits)].map((digit) => digit * weights[place]!);
    least.push(least[place]! + Math.min(...ends));
    most.push(most[place]! + Math.max(...ends));
  }
  return { least, most };
};

/** The weighted sum of cells read along them, to end on `total`; partial sums that can't come to it are dead ends. */
export const linear = (sum: Weighted, total: number, domains: Int32Array): Reading => {
  const { least, most } = rangesOf(sum, domains);
  const past = sum.cells.length;
  const restLeast = least.map((before) => least[past]! - before);
  const restMost = most.map((before) => most[past]! - before);
  const step = (place: number, state: number, digit: number): number => {
    const after = state + least[place]! + sum.weights[place]! * digit;
    const isInReach = after + restLeast[place + 1]! <= total && after + restMost[place + 1]! >= total;
    return isInReach ? after - least[place + 1]! : -1;
  };
  return { cells: sum.cells, step, isOk: (state) => state + least[past]! === total };
};

/** The same sum, to end on anything but `total`. */
export const linearNot = (sum: Weighted, total: number, domains: Int32Array): Reading => {
  const { least } = rangesOf(sum, domains);
  const step = (place: number, state: number, digit: number): number =>
    state + least[place]! + sum.weights[place]! * digit - least[place + 1]!;
  return { cells: sum.cells, step, isOk: (state) => state + least[sum.cells.length]! !== total };
};
