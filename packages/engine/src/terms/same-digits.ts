import { both, type Digits, digitsOf, either, isOne, listOf, none } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { matchingOf } from "./matching.ts";
import type { Domains, Propagator, SameDigits, TermMeaning } from "./term.ts";

/** Each cell of one half has its like in the other: a pairing of the halves, each pair free to choose a common digit. */
const byPairing = (left: readonly Cell[], right: readonly Cell[]): Propagator => {
  const matching = matchingOf(left.length);
  const common = (domains: Domains, cell: Cell, others: readonly Cell[]): Digits =>
    both(
      domains.at(cell),
      others.reduce<Digits>((set, other) => either(set, domains.at(other)), none),
    );
  return (domains) => {
    for (const [k, cell] of left.entries())
      matching.options[k] = digitsOf(
        right.flatMap((other, j) => (both(domains.at(cell), domains.at(other)) === 0 ? [] : [j])),
      );
    if (!matching.run()) return false;
    const partners = left.map((_, k) => listOf(matching.taken[k] as Digits));
    const keptLeft = left.map((cell, k) =>
      common(
        domains,
        cell,
        partners[k]!.map((j) => right[j]!),
      ),
    );
    const keptRight = right.map((cell, j) =>
      common(
        domains,
        cell,
        left.filter((_, k) => partners[k]!.includes(j)),
      ),
    );
    return (
      left.every((cell, k) => domains.keep(cell, keptLeft[k]!)) &&
      right.every((cell, j) => domains.keep(cell, keptRight[j]!))
    );
  };
};

/** For halves too big to pair in one word: what the other half can hold, and the count once all is settled. */
const byUnion = (left: readonly Cell[], right: readonly Cell[]): Propagator => {
  const union = (domains: Domains, cells: readonly Cell[]): Digits =>
    cells.reduce<Digits>((set, cell) => either(set, domains.at(cell)), none);
  const sorted = (domains: Domains, cells: readonly Cell[]): string =>
    cells
      .map((cell) => domains.at(cell) >>> 0)
      .sort((a, b) => a - b)
      .join();
  return (domains) => {
    const ofRight = union(domains, right);
    if (!left.every((cell) => domains.keep(cell, ofRight))) return false;
    const ofLeft = union(domains, left);
    if (!right.every((cell) => domains.keep(cell, ofLeft))) return false;
    const settled = [...left, ...right].every((cell) => isOne(domains.at(cell)));
    return !settled || sorted(domains, left) === sorted(domains, right);
  };
};

const propagator = ({ cells, half }: SameDigits): Propagator => {
  if (cells.length !== 2 * half) return () => false;
  const [first, second] = [cells.slice(0, half), cells.slice(half)];
  // A cell of both halves is its own like, whatever it holds.
  const left = first.filter((cell) => !second.includes(cell));
  const right = second.filter((cell) => !first.includes(cell));
  return left.length > 32 ? byUnion(left, right) : byPairing(left, right);
};

/** Full up to 32 cells a half. */
export const sameDigits: TermMeaning<SameDigits> = { term: "same-digits", strength: "full", propagator };
