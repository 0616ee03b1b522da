import { has, listOf, none } from "../src/board/digits.ts";
import type { State, Term } from "../src/terms/term.ts";

const sorted = (digits: readonly number[]): string => [...digits].sort((a, b) => a - b).join();
const neighbours = (digits: readonly number[]): [number, number][] =>
  digits.slice(1).map((digit, k) => [digits[k]!, digit]);
const differ = (digits: readonly number[]): boolean => new Set(digits).size === digits.length;

/** Whether the classes can be given to the digits one to one, tried in every way. */
const classed = (digits: readonly number[], classes: readonly number[]): boolean =>
  digits.length === 0 ||
  classes.some(
    (set, k) =>
      has(set as never, digits[0]!) && classed(digits.slice(1), [...classes.slice(0, k), ...classes.slice(k + 1)]),
  );

/** What each term says of digits in the order of its cells, as plainly as can be: the judge of the propagators. */
export const obeys = (term: Term, digits: readonly number[]): boolean => {
  switch (term.term) {
    case "different": {
      const all = listOf(term.digits ?? none);
      return differ(digits) && (all.length !== digits.length || sorted(all) === sorted(digits));
    }
    case "pair":
      return has(term.allowed[digits[0]!] ?? none, digits[1]!);
    case "order":
      return neighbours(digits).every(([low, high]) => (term.strict ? low < high : low <= high));
    case "sum":
      return digits.reduce((sum, digit, k) => sum + digit * (term.weights?.[k] ?? 1), 0) === term.equals;
    case "equal":
      return digits.every((digit) => digit === digits[0]);
    case "run":
      return differ(digits) && Math.max(...digits) - Math.min(...digits) === digits.length - 1;
    case "contains":
      return term.digits.every(
        (digit) =>
          digits.filter((other) => other === digit).length >= term.digits.filter((other) => other === digit).length,
      );
    case "same-digits":
      return sorted(digits.slice(0, term.half)) === sorted(digits.slice(term.half));
    case "classes":
      return digits.length === term.classes.length && classed(digits, term.classes);
    case "automaton": {
      const end = digits.reduce<State | undefined>(
        (state, digit, k) => (state === undefined ? state : term.next(state, digit, k)),
        term.start,
      );
      return end !== undefined && term.ok(end);
    }
    case "table":
      return term.rows.some((row) => row.join() === digits.join());
  }
};
