import { count, type Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { isSettled, lowest, type Places } from "./constraint.ts";

/** What to choose among. */
export interface Open {
  readonly cells: readonly Cell[];
  readonly places: readonly Places[];
  /** By `Cell`, as bits. */
  readonly at: Int32Array;
  /** By `Cell`: the more, the sooner its turn; all alike where undefined. */
  readonly weights: Float64Array | undefined;
}

/** A cell and a digit to try there, and how good a choice it is: the fewest options by weight. */
interface Choice {
  readonly cell: Cell;
  readonly digit: number;
  readonly cost: number;
}

const none: Choice = { cell: -1, digit: -1, cost: Number.POSITIVE_INFINITY };

const costOf = (options: number, cell: Cell, { weights }: Open): number =>
  weights ? options / weights[cell]! : options;

const bestCell = (open: Open): Choice => {
  const { at } = open;
  let cell = -1;
  let cost = Number.POSITIVE_INFINITY;
  for (const other of open.cells) {
    if (isSettled(at[other]!)) continue;
    const costHere = costOf(count(at[other] as Digits), other, open);
    if (costHere < cost) [cell, cost] = [other, costHere];
  }
  return cell < 0 ? none : { cell, digit: lowest(at[cell]!), cost };
};

const placed = (digit: number, options: number, { cells }: Places, open: Open): Choice => {
  const cell = cells.find((other) => (open.at[other]! & (1 << digit)) !== 0)!;
  return { cell, digit, cost: costOf(options, cell, open) };
};

/** Of the digits that have two places, or else three, the first: more places than that are hardly ever the fewest. */
const bestPlace = (places: Places, open: Open): Choice => {
  const seen = [0, 0, 0, 0];
  let settled = 0;
  for (const cell of places.cells) {
    const here = open.at[cell]!;
    for (let k = 3; k > 0; k--) seen[k]! |= seen[k - 1]! & here;
    seen[0]! |= here;
    if (isSettled(here)) settled |= here;
  }
  const wanted = places.digits & ~settled;
  const twice = wanted & seen[1]! & ~seen[2]!;
  if (twice !== 0) return placed(lowest(twice), 2, places, open);
  const thrice = wanted & seen[2]! & ~seen[3]!;
  return thrice === 0 ? none : placed(lowest(thrice), 3, places, open);
};

/** The next thing to try, or undefined where every cell is settled. */
export const choose = (open: Open): Choice | undefined => {
  let best = bestCell(open);
  if (best === none) return undefined;
  for (const places of open.places) {
    if (!open.weights && best.cost === 2) break;
    const other = bestPlace(places, open);
    if (other.cost < best.cost) best = other;
  }
  return best;
};
