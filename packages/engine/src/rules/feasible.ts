import { count, type Digits, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { State } from "../terms/term.ts";
import { digitsIn } from "./cells.ts";
import type { Scope, Setting } from "./contract.ts";

/** How many partial fillings are tried before a rule counts as one that can be met. */
const mostTries = 20_000;

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

const isLongestFirst = (a: Scope, b: Scope): number =>
  Number("start" in b) - Number("start" in a) || b.cells.length - a.cells.length;

/** The cells in an order in which most scopes can be read along. */
const orderOf = (scopes: readonly Scope[]): Cell[] => {
  const reading = scopes.filter((scope) => "start" in scope).sort(isLongestFirst);
  return [
    ...new Set([...reading, ...scopes.filter((scope) => "holds" in scope), ...scopes].flatMap(({ cells }) => cells)),
  ];
};

const isCrowded = (scope: Scope, setting: Pick<Setting, "domains">): boolean =>
  "different" in scope && scope.cells.length > count(digitsIn(setting, scope.cells));

/**
 * Whether some digits of these cells obey all the scopes, houses left aside. Exact unless it takes more than 20,000
 * partial fillings: then it is taken to be so. Fillings that leave every scope with the same memory count as one.
 */
export const isFeasible = (scopes: readonly Scope[], setting: Pick<Setting, "domains">): boolean => {
  if (scopes.some((scope) => isCrowded(scope, setting))) return false;
  const cells = orderOf(scopes);
  const order = new Map(cells.map((cell, k) => [cell, k]));
  const readers = scopes.map((scope) => readerOf(scope, order));
  const at = cells.map((cell) => scopes.flatMap((scope, k) => (scope.cells.includes(cell) ? [k] : [])));
  const last = scopes.map((scope) => Math.max(...scope.cells.map((cell) => order.get(cell)!)));
  const options = cells.map((cell): number[] => listOf(setting.domains[cell] as Digits));

  let states = new Map<string, State[]>([["", readers.map(({ start }) => start)]]);
  let tries = 0;
  for (const [k, cell] of cells.entries()) {
    const next = new Map<string, State[]>();
    for (const before of states.values())
      for (const digit of options[k]!) {
        if (++tries > mostTries) return true;
        const after = [...before];
        let holds = true;
        for (const s of at[k]!) {
          const state = readers[s]!.read(after[s]!, cell, digit);
          if (state === undefined) holds = false;
          else after[s] = last[s] === k ? "done" : state;
          if (!holds) break;
        }
        if (holds) next.set(after.join(";"), after);
      }
    if (next.size === 0) return false;
    states = next;
  }
  return true;
};
