import type { Digits } from "../board/digits.ts";
import { count, has, isEmpty, isOne, listOf, min, only, without } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { propagatorOf } from "../terms/registry.ts";
import type { Domains, Propagator, Term } from "../terms/term.ts";

/** A few terms and the cells that they bind, looked at together. */
export interface Cases {
  readonly cells: readonly Cell[];
  /**
   * By place in `cells`: the digits that occur in some assignment within `start` (by place in `cells` too) that obeys
   * all terms; all empty where there is none, undefined where that takes more than `most` tries.
   */
  possible(start: readonly Digits[], most?: number): readonly Digits[] | undefined;
  /** Whether some assignment within `start` has one of these digits at that place; undefined after `most` tries. */
  allows(start: readonly Digits[], place: number, wanted: Digits, most?: number): boolean | undefined;
  /** Narrows once to what the terms leave, for trying digits in it one by one. */
  prober(start: readonly Digits[]): Prober;
}

/** Tries digits in cells (by place in `cells`), each from the same state. */
export interface Prober {
  readonly isBroken: boolean;
  readonly digits: readonly Digits[];
  probe(place: number, digit: number): Probe;
}

/** How often terms were looked at until nothing changed, whether something became impossible, and what is left. */
export interface Probe {
  readonly broken: boolean;
  readonly looks: number;
  readonly digits: readonly Digits[];
}

/** More ways than this are not remembered. */
const mostWays = 48;

interface Watcher {
  readonly propagate: Propagator;
  readonly cells: readonly number[];
}

const isPair = ({ term, cells }: Term): boolean => term === "different" && cells.length === 2;

/** Two cells that differ, without more ado. */
const differing =
  ([a, b]: readonly Cell[]): Propagator =>
  ({ at, keep }) =>
    (!isOne(at(a!)) || keep(b!, without(-1 as Digits, at(a!)))) &&
    (!isOne(at(b!)) || keep(a!, without(-1 as Digits, at(b!))));

/** Prepares terms for being looked at together; a term's cells must all be among `cells`. */
export const casesOf = (cells: readonly Cell[], terms: readonly Term[]): Cases => {
  const place = new Map(cells.map((cell, k) => [cell, k]));
  const watchers: Watcher[] = terms.map((term) => {
    const local = { ...term, cells: term.cells.map((cell) => place.get(cell)!) };
    return { propagate: isPair(local) ? differing(local.cells) : propagatorOf(local), cells: local.cells };
  });
  const watching: number[][] = cells.map((_, k) =>
    watchers.flatMap(({ cells: bound }, w) => (bound.includes(k) ? [w] : [])),
  );

  const size = cells.length;
  const digits = new Int32Array(size);
  const isDue = new Uint8Array(watchers.length);
  const due = new Int32Array(watchers.length);
  let first = 0;
  let waiting = 0;
  let looks = 0;
  const trail: number[] = [];

  const callSoon = (w: number): void => {
    if (isDue[w]) return;
    isDue[w] = 1;
    due[(first + waiting++) % due.length] = w;
  };
  const domains: Domains = {
    at: (k) => digits[k] as Digits,
    keep: (k, kept) => {
      const left = digits[k]! & kept;
      if (left === digits[k]) return left !== 0;
      trail.push(k, digits[k]!);
      digits[k] = left;
      const watched = watching[k]!;
      for (let j = 0; j < watched.length; j++) callSoon(watched[j]!);
      return left !== 0;
    },
  };
  const undo = (mark: number): void => {
    while (trail.length > mark) {
      const was = trail.pop()!;
      digits[trail.pop()!] = was;
    }
  };
  const settle = (): boolean => {
    let fine = true;
    while (waiting > 0) {
      const w = due[first]!;
      first = (first + 1) % due.length;
      waiting--;
      isDue[w] = 0;
      if (!fine) continue;
      looks++;
      fine = watchers[w]!.propagate(domains);
    }
    return fine;
  };
  const begin = (start: readonly Digits[]): boolean => {
    digits.set(start);
    trail.length = 0;
    looks = 0;
    for (let w = 0; w < watchers.length; w++) callSoon(w);
    const fine = settle();
    return fine && !start.some(isEmpty);
  };
  const assign = (k: number, digit: number): boolean => {
    const fine = domains.keep(k, only(digit));
    return settle() && fine;
  };

  /** Finds one assignment below the state at hand, digits that `wanted` names first; leaves the state at it. */
  const findOne = (wanted: Int32Array, budget: { left: number }): boolean => {
    let best = -1;
    for (let k = 0; k < size; k++)
      if (!isOne(digits[k] as Digits) && (best < 0 || count(digits[k] as Digits) < count(digits[best] as Digits)))
        best = k;
    if (best < 0) return true;
    const mark = trail.length;
    const fresh = digits[best]! & wanted[best]!;
    for (const digit of [...listOf(fresh as Digits), ...listOf(without(digits[best] as Digits, fresh as Digits))]) {
      if (budget.left-- <= 0) return false;
      if (assign(best, digit) && findOne(wanted, budget)) return true;
      undo(mark);
    }
    return false;
  };

  /** Ways that were found before, the latest first: most of them still stand when a little is narrowed. */
  const ways: Int32Array[] = [];
  const supported = new Int32Array(size);
  const unsure = new Int32Array(size);
  const note = (way: Int32Array): void => {
    for (let k = 0; k < size; k++) supported[k]! |= way[k]!;
  };
  const stands = (way: Int32Array): boolean => {
    for (let k = 0; k < size; k++) if ((way[k]! & digits[k]!) === 0) return false;
    return true;
  };

  const remember = (): void => {
    ways.unshift(digits.slice());
    ways.length = Math.min(ways.length, mostWays);
  };
  const possible = (start: readonly Digits[], most = 2000): readonly Digits[] | undefined => {
    const none = (): readonly Digits[] => cells.map(() => 0 as Digits);
    if (!begin(start)) return none();
    supported.fill(0);
    for (const way of ways) if (stands(way)) note(way);
    const budget = { left: most };
    for (let k = 0; k < size; k++)
      for (;;) {
        const open = digits[k]! & ~supported[k]!;
        if (open === 0) break;
        const digit = min(open as Digits);
        const mark = trail.length;
        for (let other = 0; other < size; other++) unsure[other] = digits[other]! & ~supported[other]!;
        const found = assign(k, digit) && findOne(unsure, budget);
        if (found) {
          note(digits);
          remember();
        } else if (budget.left <= 0) return undefined;
        undo(mark);
        if (found) continue;
        const fine = domains.keep(k, ~only(digit) as Digits);
        if (!settle() || !fine) return none();
      }
    return Array.from(digits) as Digits[];
  };

  const allows = (start: readonly Digits[], place: number, wanted: Digits, most = 2000): boolean | undefined => {
    digits.set(start);
    digits[place]! &= wanted;
    if (ways.some(stands)) return true;
    if (!begin(Array.from(digits) as Digits[])) return false;
    const budget = { left: most };
    const found = findOne(digits.slice(), budget);
    if (found) remember();
    return found || (budget.left > 0 ? false : undefined);
  };

  return {
    cells,
    possible,
    allows,
    prober: (start) => {
      const isBroken = !begin(start);
      const base = digits.slice();
      const probe = (place: number, digit: number): Probe => {
        digits.set(base);
        trail.length = 0;
        looks = 0;
        const fine = has(base[place] as Digits, digit) && assign(place, digit);
        return { broken: !fine, looks, digits: Array.from(digits) as Digits[] };
      };
      return { isBroken, digits: Array.from(base) as Digits[], probe };
    },
  };
};
