import { type Digits, either, has, listOf, max, none } from "../board/digits.ts";

/** Cells that can hold the same digits, counted together. */
interface Sort {
  readonly digits: Digits;
  readonly count: number;
}

const sortsOf = (domains: readonly Digits[]): Sort[] =>
  [...new Set(domains)].map((digits) => ({ digits, count: domains.filter((other) => other === digits).length }));

/** Every way to give `copies` cells of the open sorts away: what is left of each. */
function* giving(left: readonly number[], open: readonly boolean[], copies: number): Generator<readonly number[]> {
  if (copies === 0) yield left;
  if (copies === 0 || left.length === 0) return;
  const [count, ...rest] = left as [number, ...number[]];
  for (let taken = 0; taken <= (open[0] ? Math.min(count, copies) : 0); taken++)
    for (const others of giving(rest, open.slice(1), copies - taken)) yield [count - taken, ...others];
}

interface Filling {
  /** What each cell can hold. */
  readonly domains: readonly Digits[];
  /** How often a digit may stand in the cells. */
  copies(digit: number): readonly number[];
  readonly start: number;
  /** What a value becomes with that digit; never less than before, unless it becomes 0. */
  add(value: number, digit: number): number;
  /** Of what lies above, only the least matters. */
  readonly limit: number;
}

/** Without what lies above the limit but the least of it. */
const upTo = (limit: number, values: Iterable<number>): Set<number> => {
  const all = [...values];
  const above = all
    .filter((value) => value > limit)
    .reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  return new Set(all.filter((value) => value <= limit || value === above));
};

/**
 * The values up to the limit, and the least above it, that fillings of the cells come to: exact, digit by digit over how
 * many cells of each sort are still free.
 */
const valuesOf = ({ domains, copies, start, add, limit }: Filling): ReadonlySet<number> => {
  const sorts = sortsOf(domains);
  const all = sorts.map(({ count }) => count);
  let ways = new Map([[all.join(), { left: all, values: new Set([start]) }]]);
  for (const digit of listOf(domains.reduce<Digits>(either, none))) {
    const open = sorts.map(({ digits }) => has(digits, digit));
    const isStuck = (left: readonly number[]): boolean =>
      left.some((count, k) => count > 0 && max(sorts[k]!.digits) <= digit);
    const further: typeof ways = new Map();
    for (const { left, values } of ways.values())
      for (const many of copies(digit))
        for (const after of giving(left, open, many)) {
          if (isStuck(after)) continue;
          const next = many === 0 ? values : [...values].map((value) => add(value, digit));
          const before = further.get(after.join())?.values ?? [];
          further.set(after.join(), { left: [...after], values: upTo(limit, [...before, ...next]) });
        }
    ways = further;
  }
  return ways.get(all.map(() => 0).join())?.values ?? new Set();
};

const onceAtMost = (): readonly number[] => [0, 1];

/** The sums up to the limit, and the least above, of cells that hold no digit twice; none where they can't all differ. */
export const sumsOfDifferent = (domains: readonly Digits[], limit: number): ReadonlySet<number> =>
  valuesOf({ domains, copies: onceAtMost, start: 0, add: (sum, digit) => sum + digit, limit });

/** The same for products. */
export const productsOfDifferent = (domains: readonly Digits[], limit: number): ReadonlySet<number> =>
  valuesOf({ domains, copies: onceAtMost, start: 1, add: (product, digit) => product * digit, limit });

export const canAllDiffer = (domains: readonly Digits[]): boolean =>
  valuesOf({ domains, copies: onceAtMost, start: 0, add: () => 0, limit: 0 }).size > 0;

/** Whether the cells can hold digits that each stand in as many of them as they say. */
export const canCountThemselves = (domains: readonly Digits[]): boolean =>
  valuesOf({ domains, copies: (digit) => [0, digit], start: 0, add: () => 0, limit: 0 }).size > 0;

/** The sums of cells that may repeat digits, ascending. */
export const sumsOf = (domains: readonly Digits[]): readonly number[] => {
  const bits = domains.reduce(
    (sums, domain) => listOf(domain).reduce((all, digit) => all | (sums << BigInt(digit)), 0n),
    1n,
  );
  return [...bits.toString(2)].reverse().flatMap((bit, sum) => (bit === "1" ? [sum] : []));
};
