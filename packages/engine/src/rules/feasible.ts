import { count, type Digits, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { State } from "../terms/term.ts";
import { digitsIn } from "./cells.ts";
import type { Scope, Setting } from "./contract.ts";

/** How many partial fillings are tried of one rule, and of all rules of a file, before a rule counts as one that can be met. */
const mostTries = 20_000;
const mostTriesInAll = 400_000;

/** A scope as it is read along the cells in their common order: what it remembers, `undefined` once it is broken. */
interface Reader {
  readonly start: State;
  read(state: State, cell: Cell, digit: number): State | undefined;
}

const isAlong = (cells: readonly Cell[], order: ReadonlyMap<Cell, number>): boolean =>
  cells.every((cell, k) => k === 0 || order.get(cells[k - 1]!)! < order.get(cell)!);

/** Reads digits one cell at a time and judges them all at the last; what it remembers is the digits themselves. */
const atTheEnd = (
  cells: readonly Cell[],
  judge: (digits: readonly number[]) => boolean,
  order: ReadonlyMap<Cell, number>,
): Reader => {
  const sorted = [...cells].sort((a, b) => order.get(a)! - order.get(b)!);
  return {
    start: "",
    read: (state, cell, digit) => {
      const so = state === "" ? `${digit}` : `${state},${digit}`;
      if (cell !== sorted.at(-1)) return so;
      const digits = so.split(",").map(Number);
      return judge(cells.map((other) => digits[sorted.indexOf(other)]!)) ? "done" : undefined;
    },
  };
};

const readerOf = (scope: Scope, order: ReadonlyMap<Cell, number>): Reader => {
  const { cells } = scope;
  if ("different" in scope)
    return {
      start: 0,
      read: (used, _, digit) => (((used as number) >>> digit) & 1 ? undefined : (used as number) | (1 << digit)),
    };
  if ("holds" in scope) return atTheEnd(cells, scope.holds, order);
  if (!isAlong(cells, order)) {
    const end = (digits: readonly number[]): State | undefined =>
      digits.reduce<State | undefined>(
        (state, digit, k) => (state === undefined ? state : scope.next(state, digit, k)),
        scope.start,
      );
    return atTheEnd(cells, (digits) => end(digits) !== undefined && scope.ok(end(digits)!), order);
  }
  const last = cells.length - 1;
  return {
    start: scope.start,
    read: (state, cell, digit) => {
      const index = cells.indexOf(cell);
      const next = scope.next(state, digit, index);
      return next === undefined || (index === last && !scope.ok(next)) ? undefined : next;
    },
  };
};

const longestFirst = (a: Scope, b: Scope): number => b.cells.length - a.cells.length;

/** The cells in an order in which most scopes can be read along. */
const orderOf = (scopes: readonly Scope[]): Cell[] => {
  const reading = scopes.filter((scope) => "start" in scope).sort(longestFirst);
  return [
    ...new Set([...reading, ...scopes.filter((scope) => "holds" in scope), ...scopes].flatMap(({ cells }) => cells)),
  ];
};

const isCrowded = (scope: Scope, setting: Pick<Setting, "domains">): boolean =>
  "different" in scope && scope.cells.length > count(digitsIn(setting, scope.cells));

/** What the readers make of a digit in a cell, `undefined` once one is broken; those that are through forget all. */
const readAll = (
  readers: readonly Ending[],
  before: readonly State[],
  cell: Cell,
  digit: number,
  k: number,
): State[] | undefined => {
  const after = [...before];
  for (const [r, { reader, cells, last }] of readers.entries()) {
    if (!cells.has(cell)) continue;
    const state = reader.read(before[r]!, cell, digit);
    if (state === undefined) return undefined;
    after[r] = last === k ? "" : state;
  }
  return after;
};

interface Ending {
  readonly reader: Reader;
  readonly cells: ReadonlySet<Cell>;
  /** The place in the order of its last cell. */
  readonly last: number;
}

interface Search {
  readonly met: boolean;
  readonly tries: number;
}

const search = (scopes: readonly Scope[], domains: readonly Digits[], most: number): Search => {
  const cells = orderOf(scopes);
  const order = new Map(cells.map((cell, k) => [cell, k]));
  const readers = scopes.map(
    (scope): Ending => ({
      reader: readerOf(scope, order),
      cells: new Set(scope.cells),
      last: Math.max(...scope.cells.map((cell) => order.get(cell)!)),
    }),
  );
  const options = cells.map((cell) => listOf(domains[cell]!));
  const failed = cells.map(() => new Set<string>());
  let tries = 0;
  const canGoOn = (states: readonly State[], k: number): boolean => {
    if (k === cells.length || tries > most) return true;
    const memory = states.join(";");
    if (failed[k]!.has(memory)) return false;
    for (const digit of options[k]!) {
      tries++;
      const after = readAll(readers, states, cells[k]!, digit, k);
      if (after && canGoOn(after, k + 1)) return true;
    }
    failed[k]!.add(memory);
    return false;
  };
  return {
    met: canGoOn(
      readers.map(({ reader }) => reader.start),
      0,
    ),
    tries,
  };
};

/** Whether some digits of these cells obey all the scopes; see `feasibilityIn`. */
export const isFeasible = (scopes: readonly Scope[], setting: Pick<Setting, "domains">): boolean =>
  feasibilityIn(setting)(scopes);

/**
 * Judges rules of one file: whether some digits of the cells obey all of a rule's scopes, houses left aside. Exact unless
 * it takes more than 20,000 partial fillings (400,000 for all rules asked): then it is taken to be so. Fillings that
 * leave every scope with the same memory are tried once.
 */
export const feasibilityIn = (setting: Pick<Setting, "domains">): ((scopes: readonly Scope[]) => boolean) => {
  let left = mostTriesInAll;
  return (scopes) => {
    if (scopes.some((scope) => isCrowded(scope, setting))) return false;
    const { met, tries } = search(scopes, setting.domains, Math.min(mostTries, left));
    left = Math.max(0, left - tries);
    return met;
  };
};
