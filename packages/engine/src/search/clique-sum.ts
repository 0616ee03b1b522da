import type { Digits } from "../board/digits.ts";
import type { Propagator } from "../terms/term.ts";
import type { Equation } from "./equation.ts";

/** What an equation leaves whose cells must all differ: its ways are tried one by one, as far as they show anything new. */
export const cliqueSumPropagator = (
  { cells, weights, equals }: Equation,
  now: Int32Array,
  /** What to do where there are too many ways. */
  otherwise: Propagator,
  mostWays: number,
): Propagator => {
  const size = cells.length;
  const last = size - 1;
  const cellOf = Int32Array.from(cells);
  const weight = Int32Array.from(weights);
  const digits = new Int32Array(size);
  const kept = new Int32Array(size);
  /** By place: the least and the most that the cells from there on can add. */
  const least = new Int32Array(size + 1);
  const most = new Int32Array(size + 1);
  /** All cells after this place have all their digits kept. */
  let open = last;

  const measure = (): boolean => {
    let ways = 1;
    for (let k = last; k >= 0; k--) {
      const set = now[cellOf[k]!]!;
      digits[k] = set;
      const low = (31 - Math.clz32(set & -set)) * weight[k]!;
      const high = (31 - Math.clz32(set)) * weight[k]!;
      least[k] = least[k + 1]! + Math.min(low, high);
      most[k] = most[k + 1]! + Math.max(low, high);
      if (k === last) continue;
      let count = 0;
      for (let left = set; left !== 0; left &= left - 1) count++;
      ways *= count;
    }
    return ways <= mostWays;
  };
  const mark = (k: number, bit: number): void => {
    kept[k]! |= bit;
    while (open >= 0 && kept[open] === digits[open]) open--;
  };
  const reachLast = (used: number, rest: number): boolean => {
    const digit = Math.trunc(rest / weight[last]!);
    const bit = 1 << digit;
    if (digit * weight[last]! !== rest || (digits[last]! & ~used & bit) === 0) return false;
    mark(last, bit);
    return true;
  };
  /** Marks the digits of the cells from place k on that, without `used`, add up to `rest`. */
  const reach = (k: number, used: number, rest: number): boolean => {
    if (k === last) return reachLast(used, rest);
    let any = false;
    for (let left = digits[k]! & ~used; left !== 0; left &= left - 1) {
      const bit = left & -left;
      const over = rest - (31 - Math.clz32(bit)) * weight[k]!;
      if (over < least[k + 1]! || over > most[k + 1]! || !reach(k + 1, used | bit, over)) continue;
      mark(k, bit);
      any = true;
      if (open < k) break;
    }
    return any;
  };

  return (domains) => {
    const isSmall = measure();
    if (equals < least[0]! || equals > most[0]!) return false;
    if (!isSmall) return otherwise(domains);
    kept.fill(0);
    open = last;
    if (!reach(0, 0, equals)) return false;
    for (let k = 0; k < size; k++) if (!domains.keep(cellOf[k]!, kept[k] as Digits)) return false;
    return true;
  };
};
