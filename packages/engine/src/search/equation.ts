import { type Digits, reversed } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { oneWord } from "../terms/partial-sums.ts";
import { propagatorOf } from "../terms/registry.ts";
import type { Propagator } from "../terms/term.ts";
import { cliqueSumPropagator } from "./clique-sum.ts";

/** Weighted digits that add up to `equals`; no cell twice, no weight 0. */
export interface Equation {
  readonly cells: readonly Cell[];
  readonly weights: readonly number[];
  readonly equals: number;
}

/** Above so many ways to fill all but one cell of a clique, the difference of its cells is left to the sets. */
const mostWays = 1000;

/** Cut into cliques of cells that must all differ, greedily, the largest first. */
const cliquesOf = (cells: readonly Cell[], peers: readonly (readonly Cell[])[]): Cell[][] => {
  const left = new Set(cells);
  const cliques: Cell[][] = [];
  const grown = (seed: Cell): Cell[] => {
    const clique = [seed];
    for (const cell of left) if (clique.every((other) => peers[other]!.includes(cell))) clique.push(cell);
    return clique;
  };
  while (left.size > 0) {
    const best = [...left].map(grown).reduce((a, b) => (b.length > a.length ? b : a));
    for (const cell of best) left.delete(cell);
    cliques.push(best);
  }
  return cliques;
};

const lowest = (mask: number): number => 31 - Math.clz32(mask & -mask);
const highest = (mask: number): number => 31 - Math.clz32(mask);

/** What an equation leaves, its cells that see each other differing. As in terms/sum.ts all is measured from one end. */
export const equationPropagator = (
  { cells, weights, equals }: Equation,
  peers: readonly (readonly Cell[])[],
  now: Int32Array,
): Propagator => {
  const asSum = (): Propagator => propagatorOf({ term: "sum", owner: "", cells, weights, equals });
  const cliques = cliquesOf(cells, peers);
  if (cliques.length === cells.length) return asSum();
  /** Made when it is wanted, which for few cells it never is. */
  let sum: Propagator | undefined;
  const plain: Propagator = (domains) => {
    sum ??= asSum();
    return sum(domains);
  };
  if (cliques.length === 1) return cliqueSumPropagator({ cells, weights, equals }, now, plain, mostWays);
  const order = Int32Array.from(cliques.flat());
  const signed = Int32Array.from(order, (cell) => weights[cells.indexOf(cell)]!);
  const weight = signed.map(Math.abs);
  const size = order.length;
  const starts = [0];
  for (const clique of cliques) starts.push(starts.at(-1)! + clique.length);
  const first = Int32Array.from(starts);
  const narrowSteps = oneWord(new Int32Array(cliques.length).fill(1));
  const steps = new Int32Array(cliques.length);
  const base = new Int32Array(size);
  const kept = new Int32Array(size);
  let up = true;
  let rest = 0;
  let within = 0;

  const rises = (k: number): boolean => signed[k]! > 0 === up;
  const byOf = (k: number, bit: number): number => {
    const digit = 31 - Math.clz32(bit);
    return (rises(k) ? digit - base[k]! : base[k]! - digit) * weight[k]!;
  };
  /** By how much the digits of the cell at place k, of weight 1, are further than its end; and back. */
  const stepsOf = (k: number, digits: number): number =>
    rises(k) ? digits >>> base[k]! : reversed(digits) >>> (31 - base[k]!);
  const digitsOf = (k: number, steps: number): number =>
    rises(k) ? steps << base[k]! : reversed(steps) >>> (31 - base[k]!);
  /** The sums that the cells k to `end` can add when they leave out `used`. */
  const sumsOf = (k: number, end: number, used: number): number => {
    const digits = now[order[k]!]! & ~used;
    if (k === end && weight[k] === 1) return stepsOf(k, digits) & within;
    let sums = 0;
    for (let left = digits; left !== 0; left &= left - 1) {
      const bit = left & -left;
      const by = byOf(k, bit);
      if (by <= rest) sums |= (k === end ? 1 : sumsOf(k + 1, end, used | bit)) << by;
    }
    return sums & within;
  };
  /** Marks the digits of the cells k to `end` that reach one of the sums in `wanted`, less what was added before. */
  const reach = (k: number, end: number, used: number, wanted: number): boolean => {
    const digits = now[order[k]!]! & ~used;
    let hit = 0;
    if (k === end && weight[k] === 1) hit = digitsOf(k, wanted) & digits;
    else
      for (let left = digits; left !== 0; left &= left - 1) {
        const bit = left & -left;
        const by = byOf(k, bit);
        if (by > rest) continue;
        const then = wanted >>> by;
        if (k === end ? (then & 1) !== 0 : then !== 0 && reach(k + 1, end, used | bit, then)) hit |= bit;
      }
    kept[k]! |= hit;
    return hit !== 0;
  };

  const measure = (): boolean => {
    let least = 0;
    let most = 0;
    for (let k = 0; k < size; k++) {
      const digits = now[order[k]!]!;
      const low = lowest(digits) * signed[k]!;
      const high = highest(digits) * signed[k]!;
      least += Math.min(low, high);
      most += Math.max(low, high);
    }
    up = equals - least <= most - equals;
    rest = up ? equals - least : most - equals;
    if (rest < 0 || equals < least || equals > most) return false;
    for (let k = 0; k < size; k++) base[k] = rises(k) ? lowest(now[order[k]!]!) : highest(now[order[k]!]!);
    return true;
  };
  const isSmall = (): boolean => {
    for (let clique = 0; clique < cliques.length; clique++) {
      let ways = 1;
      for (let k = first[clique]!; k < first[clique + 1]! - 1; k++) {
        let count = 0;
        for (let left = now[order[k]!]!; left !== 0; left &= left - 1) count++;
        ways *= count;
      }
      if (ways > mostWays) return false;
    }
    return true;
  };

  return (domains) => {
    if (!measure()) return false;
    if (rest > 31 || !isSmall()) return plain(domains);
    within = (2 << rest) - 1;
    kept.fill(0);
    for (let clique = 0; clique < steps.length; clique++)
      steps[clique] = sumsOf(first[clique]!, first[clique + 1]! - 1, 0);
    if (!narrowSteps(steps, rest)) return false;
    for (let clique = 0; clique < steps.length; clique++)
      if (!reach(first[clique]!, first[clique + 1]! - 1, 0, steps[clique]!)) return false;
    for (let k = 0; k < size; k++) if (!domains.keep(order[k]!, kept[k] as Digits)) return false;
    return true;
  };
};
