import { type Digits, either, has, listOf, none, only, without } from "../board/digits.ts";
import { canAllDiffer, extremesOf, productsKept, type Spend } from "./reachable.ts";

/** So many digits, and what they come to when they are multiplied. */
interface Product {
  readonly many: number;
  readonly product: number;
}

/** Every selection of the digits whose product `fits`, selections of it included. */
const selections = (digits: readonly number[], fits: (product: number) => boolean): readonly Product[] => {
  const all: Product[] = [{ many: 0, product: 1 }];
  for (const digit of digits)
    for (let k = all.length - 1; k >= 0; k--) {
      const { many, product } = all[k]!;
      if (fits(product * digit)) all.push({ many: many + 1, product: product * digit });
    }
  return all;
};

/** The digits dealt out in two hands, so that selections of all are pairs of selections of each. */
const halvesOf = (digits: readonly number[]): readonly [number[], number[]] => [
  digits.filter((_, k) => k % 2 === 0),
  digits.filter((_, k) => k % 2 === 1),
];

/** Whether so many of the digits make the product: what one half must leave is looked up in the other. */
const isMade = (digits: readonly number[], many: number, wanted: number): boolean => {
  const [some, others] = halvesOf(digits).map((half) => selections(half, (product) => wanted % product === 0));
  const left = new Map<number, Digits>();
  for (const { many, product } of others!) left.set(product, either(left.get(product) ?? none, only(many)));
  return some!.some(({ many: taken, product }) => has(left.get(wanted / product) ?? none, many - taken));
};

/** By how many digits they have: the products, ascending. */
const byMany = (list: readonly Product[], most: number): number[][] =>
  Array.from({ length: most + 1 }, (_, many) =>
    list.flatMap((one) => (one.many === many ? [one.product] : [])).sort((a, b) => a - b),
  );

/** How many of the ascending numbers, multiplied by the factor, stay below. */
const below = (sorted: readonly number[], factor: number, limit: number): number => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! * factor < limit) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The products of so many of the digits that are nearest to one that they don't make. */
const around = (digits: readonly number[], many: number, wanted: number): number[] => {
  const [some, others] = halvesOf(digits).map((half) => selections(half, () => true));
  const sorted = byMany(others!, many);
  let [under, over] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { many: taken, product } of some!) {
    const rest = sorted[many - taken] ?? [];
    const k = below(rest, product, wanted);
    if (k > 0) under = Math.max(under, rest[k - 1]! * product);
    if (k < rest.length) over = Math.min(over, rest[k]! * product);
  }
  return [under, over].filter(Number.isFinite);
};

/** Without what lies above the limit but the least of it. */
const upTo =
  (limit: number) =>
  (products: readonly number[]): number[] => {
    const above = products.reduce(
      (least, one) => (one > limit ? Math.min(least, one) : least),
      Number.POSITIVE_INFINITY,
    );
    return products.filter((product) => product <= limit || product === above);
  };

const multiplied = (digits: readonly number[]): number => digits.reduce((product, digit) => product * digit, 1);

/** What looking through both halves counts as. */
const triesOfHalves = 500;

/** Between their least product and their greatest, for cells without 0. */
const nearest = (domains: readonly Digits[], wanted: number, spend: Spend | undefined): readonly number[] => {
  const { least, most } = extremesOf(domains);
  if (wanted <= multiplied(least)) return [multiplied(least)];
  if (wanted >= multiplied(most)) return [multiplied(most)];
  if (new Set(domains).size === 1) {
    if (spend && !spend(triesOfHalves)) return [wanted];
    const digits = listOf(domains[0]!);
    return isMade(digits, domains.length, wanted) ? [wanted] : around(digits, domains.length, wanted);
  }
  const dividing = productsKept(domains, (products) => products.filter((product) => wanted % product === 0), spend);
  if (!dividing || dividing.has(wanted)) return [wanted];
  const all = productsKept(domains, upTo(wanted), spend);
  return all ? [...all] : [multiplied(least), multiplied(most)];
};

/**
 * Products of cells that hold no digit twice: the wanted one where they make it, else at least the nearest below and
 * above; none where they can't all differ. Cells of many sorts that would take too long are taken to make it.
 */
export const productsNear = (domains: readonly Digits[], wanted: number, spend?: Spend): readonly number[] => {
  if (!canAllDiffer(domains)) return [];
  const positive = domains.map((digits) => without(digits, only(0)));
  const zero = has(domains.reduce<Digits>(either, none), 0) && extremesOf(domains).least[0] === 0 ? [0] : [];
  if (wanted === 0 && zero.length > 0) return zero;
  return [...zero, ...(canAllDiffer(positive) ? nearest(positive, wanted, spend) : [])];
};
