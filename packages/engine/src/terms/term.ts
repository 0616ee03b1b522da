import type { Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** What a rule means in the few terms that search and reasoning understand. `owner` is the rule's id. */
interface Owned {
  readonly owner: string;
  readonly cells: readonly Cell[];
}

/** A state of a reading along the cells; equal states are the same value. */
export type State = number | string;

/** No digit twice; with as many cells as `digits` has, each digit once. */
export type Different = Owned & { readonly term: "different"; readonly digits?: Digits };
/** Two cells; `allowed[d]` are the digits of the second that go with d in the first (absent: none). */
export type Pair = Owned & { readonly term: "pair"; readonly allowed: readonly (Digits | undefined)[] };
/** Each cell less than the next, or not greater where it is not strict. */
export type Order = Owned & { readonly term: "order"; readonly strict: boolean };
/** The weighted digits add up to `equals`; a weight a cell (1 each where left out). No cell comes twice. */
export type Sum = Owned & { readonly term: "sum"; readonly weights?: readonly number[]; readonly equals: number };
/** Any two cells hold the same digit. */
export type Equal = Owned & { readonly term: "equal" };
/** A run of consecutive digits, each once, in any order. */
export type Run = Owned & { readonly term: "run" };
/** These digits are among the cells, each as often as it is listed. */
export type Contains = Owned & { readonly term: "contains"; readonly digits: readonly number[] };
/** The first `half` cells hold the same digits, counted, as the others. */
export type SameDigits = Owned & { readonly term: "same-digits"; readonly half: number };
/** One cell of each class: as many classes as cells. */
export type Classes = Owned & { readonly term: "classes"; readonly classes: readonly Digits[] };
/** The digits read in cell order lead from `start` to a state that is `ok`; `undefined` is a dead end. */
export type Automaton = Owned & {
  readonly term: "automaton";
  readonly start: State;
  readonly next: (state: State, digit: number, index: number) => State | undefined;
  readonly ok: (state: State) => boolean;
};
/** One of these rows of digits, in cell order. */
export type Table = Owned & { readonly term: "table"; readonly rows: readonly (readonly number[])[] };

export type Term = Different | Pair | Order | Sum | Equal | Run | Contains | SameDigits | Classes | Automaton | Table;

/**
 * What a propagator may do to the digits still possible: look, and narrow. The loop that calls it, the trail and the
 * wake-up are the caller's.
 */
export interface Domains {
  at(cell: Cell): Digits;
  /** Keeps of the cell's digits only these; false when none is left. */
  keep(cell: Cell, digits: Digits): boolean;
}

/** Narrows the domains to what the term leaves room for; false when it leaves none. */
export type Propagator = (domains: Domains) => boolean;

/**
 * One term's meaning to search and to the cases of reasoning.
 * `full`: each digit that one pass to the fixed point leaves has an assignment of the term's cells that obeys the term;
 * `bounds`: it may leave more.
 */
export interface TermMeaning<T extends Term> {
  readonly term: T["term"];
  readonly strength: "full" | "bounds";
  propagator(term: T): Propagator;
}
