import { type Digits, digitsOf, either, has, listOf, max, min, none } from "../board/digits.ts";
import { matchingOf } from "../terms/matching.ts";

/** Takes so much off what exact checks may try, a filling counting once and for each sort of cell; false once it is used up. */
export type Spend = (tries: number) => boolean;

/** What one question may try. */
const mostTries = 200_000;

const withinReason = (spend: Spend | undefined): Spend => {
  let left = mostTries;
  return (tries) => {
    left -= tries;
    return left >= 0 && (spend === undefined || spend(tries));
  };
};

/** Cells that can hold the same digits, counted together. */
interface Sort {
  readonly digits: Digits;
  readonly count: number;
}

const sortsOf = (domains: readonly Digits[]): Sort[] => {
  const counts = new Map<Digits, number>();
  for (const digits of domains) counts.set(digits, (counts.get(digits) ?? 0) + 1);
  return [...counts].map(([digits, count]) => ({ digits, count }));
};

/** Every way to give `copies` cells of the open sorts away: what is left of each. */
function* giving(left: readonly number[], open: readonly boolean[], copies: number): Generator<readonly number[]> {
  if (copies === 0) return yield left;
  const [count, ...rest] = left as [number, ...number[]];
  const later = rest.reduce((sum, other, k) => sum + (open[k + 1] ? other : 0), 0);
  const most = open[0] ? Math.min(count, copies) : 0;
  for (let taken = Math.max(0, copies - later); taken <= most; taken++)
    for (const others of giving(rest, open.slice(1), copies - taken)) yield [count - taken, ...others];
}

interface Filling<Values> {
  /** What each cell can hold. */
  readonly domains: readonly Digits[];
  /** How often a digit may stand in the cells. */
  copies(digit: number): readonly number[];
  readonly start: Values;
  /** What the values become with that digit; undefined where none is left. */
  add(values: Values, digit: number): Values | undefined;
  join(some: Values, others: Values): Values;
  /** How many values they are; one where left out. */
  size?(values: Values): number;
}

/**
 * What fillings of the cells come to: exact, digit by digit over how many cells of each sort are still free. `values` is
 * undefined where there is no filling, all of it where there are too many to try.
 */
const valuesOf = <Values>(
  { domains, copies, start, add, join, size = () => 1 }: Filling<Values>,
  spend: Spend | undefined,
): { readonly values: Values | undefined } | undefined => {
  const mayTry = withinReason(spend);
  const sorts = sortsOf(domains);
  const all = sorts.map(({ count }) => count);
  let ways = new Map([[all.join(), { left: all as readonly number[], values: start }]]);
  for (const digit of listOf(domains.reduce<Digits>(either, none))) {
    const open = sorts.map(({ digits }) => has(digits, digit));
    const isStuck = (left: readonly number[]): boolean =>
      left.some((count, k) => count > 0 && max(sorts[k]!.digits) <= digit);
    const further: typeof ways = new Map();
    for (const { left, values } of ways.values())
      for (const many of copies(digit))
        for (const after of giving(left, open, many)) {
          if (!mayTry(size(values) + sorts.length)) return undefined;
          const next = many === 0 ? values : isStuck(after) ? undefined : add(values, digit);
          if (next === undefined || isStuck(after)) continue;
          const before = further.get(after.join());
          further.set(after.join(), { left: after, values: before ? join(before.values, next) : next });
        }
    ways = further;
  }
  return { values: ways.get(all.map(() => 0).join())?.values };
};

const onceAtMost = (): readonly number[] => [0, 1];

export const canAllDiffer = (domains: readonly Digits[]): boolean => {
  if (domains.length > 32) return false;
  const matching = matchingOf(domains.length);
  matching.options.set(domains);
  return matching.run();
};

/** The digits, taken in this order wherever the cells can hold them and all taken before at once, each in a cell of its own. */
const firstOf = (order: readonly number[], domains: readonly Digits[]): number[] => {
  const cells = order.map((digit) => digitsOf(domains.flatMap((domain, cell) => (has(domain, digit) ? [cell] : []))));
  const holder = new Int32Array(32).fill(-1);
  let seen = 0;
  const place = (k: number): boolean => {
    for (let rest = cells[k]! & ~seen; rest !== 0; rest = cells[k]! & ~seen) {
      const cell = min(rest as Digits);
      seen |= 1 << cell;
      if (holder[cell]! >= 0 && !place(holder[cell]!)) continue;
      holder[cell] = k;
      return true;
    }
    return false;
  };
  const taken = order.filter((_, k) => {
    seen = 0;
    return place(k);
  });
  return taken.sort((a, b) => a - b);
};

/**
 * The least and the greatest digits, ascending, of cells that can all differ. What cells can hold at once has the
 * exchange property (a transversal matroid), so taking the least that still fits, again and again, ends with the least
 * sum and the least product.
 */
export const extremesOf = (domains: readonly Digits[]): { readonly least: number[]; readonly most: number[] } => {
  const digits = listOf(domains.reduce<Digits>(either, none));
  if (domains.every((other) => other === domains[0]))
    return { least: digits.slice(0, domains.length), most: digits.slice(digits.length - domains.length) };
  return { least: firstOf(digits, domains), most: firstOf(digits.toReversed(), domains) };
};

/** The set of sums as bits: bit s is set where they come to s. */
type Sums = bigint;

const listed = (sums: Sums): number[] => {
  const bits = sums.toString(2);
  const list: number[] = [];
  for (let sum = 0; sum < bits.length; sum++) if (bits[bits.length - 1 - sum] === "1") list.push(sum);
  return list;
};

/** The sums with anything from 0 to `most` more. */
const spread = (sums: Sums, most: number): Sums => {
  let all = sums;
  for (let reached = 0; reached < most; ) {
    const step = Math.min(reached + 1, most - reached);
    all |= all << BigInt(step);
    reached += step;
  }
  return all;
};

const withSort = (sums: Sums, { digits, count }: Sort): Sums => {
  const [least, most] = [min(digits), max(digits)];
  const isRun = listOf(digits).length === most - least + 1;
  if (isRun) return spread(sums, count * (most - least)) << BigInt(count * least);
  let all = sums;
  for (let k = 0; k < count; k++) all = listOf(digits).reduce((some, digit) => some | (all << BigInt(digit)), 0n);
  return all;
};

/** The sums of cells that may repeat digits, ascending. */
export const sumsOf = (domains: readonly Digits[]): readonly number[] =>
  domains.some((digits) => digits === none) ? [] : listed(sortsOf(domains).reduce(withSort, 1n));

/** The sums of so many different digits out of these. */
const sumsOfSome = (digits: readonly number[], many: number): Sums => {
  const sums: Sums[] = [1n, ...Array.from({ length: many }, () => 0n)];
  for (const digit of digits) for (let k = many; k > 0; k--) sums[k] = sums[k]! | (sums[k - 1]! << BigInt(digit));
  return sums[many]!;
};

/** Every sum from the least to the greatest. */
const sumsBetween = (domains: readonly Digits[]): Sums => {
  const { least: first, most: last } = extremesOf(domains);
  const [least, most] = [first, last].map((digits) => digits.reduce((sum, digit) => sum + digit, 0));
  return spread(1n, most! - least!) << BigInt(least!);
};

const sumsApart = (domains: readonly Digits[], spend: Spend | undefined): Sums => {
  if (!canAllDiffer(domains)) return 0n;
  const [only, another] = sortsOf(domains);
  if (only && !another) return sumsOfSome(listOf(only.digits), only.count);
  const add = (sums: Sums, digit: number): Sums => sums << BigInt(digit);
  const found = valuesOf({ domains, copies: onceAtMost, start: 1n, add, join: (a, b) => a | b }, spend);
  return found ? (found.values ?? 0n) : sumsBetween(domains);
};

/**
 * The sums up to the limit, and the least above, of cells that hold no digit twice; none where they can't all differ.
 * Cells of many sorts that would take too long are taken to make every sum between their least and their greatest.
 */
export const sumsOfDifferent = (domains: readonly Digits[], limit: number, spend?: Spend): ReadonlySet<number> => {
  const sums = listed(sumsApart(domains, spend));
  const above = sums.find((sum) => sum > limit);
  return new Set(sums.filter((sum) => sum <= limit || sum === above));
};

/** What `valuesOf` finds for products of different digits: those that `keep` doesn't drop on the way. */
export const productsKept = (
  domains: readonly Digits[],
  keep: (products: readonly number[]) => readonly number[],
  spend?: Spend,
): ReadonlySet<number> | undefined => {
  const start: ReadonlySet<number> = new Set([1]);
  const add = (products: ReadonlySet<number>, digit: number) =>
    new Set(keep([...products].map((product) => product * digit)));
  const join = (some: ReadonlySet<number>, others: ReadonlySet<number>) => new Set(keep([...some, ...others]));
  const size = (products: ReadonlySet<number>) => 1 + products.size;
  const found = valuesOf({ domains, copies: onceAtMost, start, add, join, size }, spend);
  return found && (found.values ?? new Set());
};

/** Whether the cells can hold digits that each stand in as many of them as they say; so where it would take too long. */
export const canCountThemselves = (domains: readonly Digits[], spend?: Spend): boolean => {
  const digits = listOf(domains.reduce<Digits>(either, none));
  if (domains.length > digits.reduce((sum, digit) => sum + digit, 0)) return false;
  const copies = (digit: number): readonly number[] => (digit === 0 ? [0] : [0, digit]);
  const found = valuesOf({ domains, copies, start: true, add: () => true, join: () => true }, spend);
  return found === undefined || found.values !== undefined;
};

/** As many of the digits as can be had with gaps between them: the least, and always the next that leaves one. */
const apartAmong = (digits: readonly number[]): readonly number[] => {
  const some: number[] = [];
  for (const digit of digits) if (digit - (some.at(-1) ?? -2) > 1) some.push(digit);
  return some;
};

/** Whether the cells can hold digits no two of which are equal or consecutive; so where it would take too long. */
export const canKeepApart = (domains: readonly Digits[], spend?: Spend): boolean => {
  const [only, another] = sortsOf(domains);
  if (only && !another) return apartAmong(listOf(only.digits)).length >= domains.length;
  if (domains.length > 16 || !canAllDiffer(domains)) return false;
  // What is kept is the greatest digit so far, of fillings that leave the same cells free.
  const add = (last: readonly number[], digit: number): readonly number[] | undefined =>
    last.some((before) => digit - before > 1) ? [digit] : undefined;
  const join = (some: readonly number[], others: readonly number[]) => [...new Set([...some, ...others])];
  const start: readonly number[] = [-2];
  const found = valuesOf({ domains, copies: onceAtMost, start, add, join }, spend);
  return found === undefined || found.values !== undefined;
};
