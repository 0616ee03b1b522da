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

interface Watcher {
  readonly propagate: Propagator;
  readonly cells: readonly number[];
}

/** Prepares terms for being looked at together; a term's cells must all be among `cells`. */
export const casesOf = (cells: readonly Cell[], terms: readonly Term[]): Cases => {
  const place = new Map(cells.map((cell, k) => [cell, k]));
  const watchers: Watcher[] = terms.map((term) => {
    const local = { ...term, cells: term.cells.map((cell) => place.get(cell)!) };
    return { propagate: propagatorOf(local), cells: local.cells };
  });
  const watching: number[][] = cells.map((_, k) =>
    watchers.flatMap(({ cells: bound }, w) => (bound.includes(k) ? [w] : [])),
  );

  const digits = new Int32Array(cells.length);
  const isDue = new Uint8Array(watchers.length);
  let due: number[] = [];
  let looks = 0;

  const wake = (k: number): void => {
    for (const w of watching[k]!)
      if (!isDue[w]) {
        isDue[w] = 1;
        due.push(w);
      }
  };
  const domains: Domains = {
    at: (k) => digits[k] as Digits,
    keep: (k, kept) => {
      const left = digits[k]! & kept;
      if (left === digits[k]) return left !== 0;
      digits[k] = left;
      wake(k);
      return left !== 0;
    },
  };
  const settle = (): boolean => {
    let fine = true;
    while (due.length > 0) {
      const w = due.shift()!;
      isDue[w] = 0;
      looks++;
      if (fine && !watchers[w]!.propagate(domains)) fine = false;
      if (!fine) {
        for (const other of due) isDue[other] = 0;
        due = [];
      }
    }
    return fine;
  };
  const begin = (start: readonly Digits[]): boolean => {
    digits.set(start);
    looks = 0;
    for (let w = 0; w < watchers.length; w++) {
      isDue[w] = 1;
      due.push(w);
    }
    return !start.some(isEmpty) && settle();
  };
  const assign = (k: number, digit: number): boolean => domains.keep(k, only(digit)) && settle();

  /** Finds one assignment below the state at hand, digits that `wanted` names first; leaves the state at it. */
  const findOne = (wanted: Int32Array, budget: { left: number }): boolean => {
    let best = -1;
    for (let k = 0; k < digits.length; k++)
      if (!isOne(digits[k] as Digits) && (best < 0 || count(digits[k] as Digits) < count(digits[best] as Digits)))
        best = k;
    if (best < 0) return true;
    const saved = digits.slice();
    const fresh = digits[best]! & wanted[best]!;
    for (const digit of [...listOf(fresh as Digits), ...listOf(without(digits[best] as Digits, fresh as Digits))]) {
      if (budget.left-- <= 0) return false;
      if (assign(best, digit) && findOne(wanted, budget)) return true;
      digits.set(saved);
    }
    return false;
  };

  const possible = (start: readonly Digits[], most = 2000): readonly Digits[] | undefined => {
    if (!begin(start)) return cells.map(() => 0 as Digits);
    const unsure = digits.slice();
    const supported = new Int32Array(digits.length);
    const budget = { left: most };
    for (let k = 0; k < digits.length; k++)
      while (unsure[k] !== 0) {
        const digit = min(unsure[k] as Digits);
        unsure[k]! &= ~(1 << digit);
        if (!has(digits[k] as Digits, digit)) continue;
        const saved = digits.slice();
        const found = assign(k, digit) && findOne(unsure, budget);
        if (found)
          for (let other = 0; other < digits.length; other++) {
            supported[other]! |= digits[other]!;
            unsure[other]! &= ~digits[other]!;
          }
        else if (budget.left <= 0) return undefined;
        digits.set(saved);
        if (!found && !(domains.keep(k, ~only(digit) as Digits) && settle())) return cells.map(() => 0 as Digits);
      }
    return Array.from(supported) as Digits[];
  };

  return {
    cells,
    possible,
    prober: (start) => {
      const isBroken = !begin(start);
      const base = digits.slice();
      const probe = (place: number, digit: number): Probe => {
        digits.set(base);
        looks = 0;
        const fine = has(base[place] as Digits, digit) && assign(place, digit);
        return { broken: !fine, looks, digits: Array.from(digits) as Digits[] };
      };
      return { isBroken, digits: Array.from(base) as Digits[], probe };
    },
  };
};
