import { count, type Digits, max } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** Cells that hold each of these digits once. */
export interface Complete {
  readonly cells: readonly Cell[];
  readonly digits: Digits;
  /** The rows, the columns or the regions of one grid have the same; no two of a family share a cell. */
  readonly family?: string;
}

/** Cells that all differ; with as many as digits that they can hold, a complete set. */
export interface Unlike {
  readonly cells: readonly Cell[];
  readonly digits?: Digits | undefined;
  readonly family?: string;
}

/** Lists of whole numbers in one: list k is `of` from `start[k]` to before `start[k + 1]`. */
export interface Lists {
  readonly start: Int32Array;
  readonly of: Int32Array;
}

/** What follows from the sets of differing cells alone, so that boards which share those can share it; never changed. */
export interface Layout {
  /** By `Cell`: the digits that are left to it when nothing is given. */
  readonly domains: Int32Array;
  readonly complete: readonly Complete[];
  /** By `Cell`: the cells that may not hold its digit, ascending. */
  readonly peers: readonly (readonly Cell[])[];
  /** By `Cell`: the complete sets that it lies in. */
  readonly setsOf: Lists;
  /** By complete set: its cells. */
  readonly cellsOf: Lists;
  /** By `Cell`: the peers with which it shares no complete set. */
  readonly loose: Lists;
  /** One more than the greatest digit: the row of a complete set in `places`. */
  readonly stride: number;
  /** By complete set and digit: `place` times how many cells can hold it, and the sum of these cells. */
  readonly places: Int32Array;
  /** How many digits the cells can lose at most, one by one. */
  readonly losses: number;
}

/** One place in `Layout.places`: more than any sum of cells of a set. */
export const place = 1 << 25;

export const listsOf = (lists: readonly ArrayLike<number>[]): Lists => {
  const start = new Int32Array(lists.length + 1);
  for (let k = 0; k < lists.length; k++) start[k + 1] = start[k]! + lists[k]!.length;
  const of = new Int32Array(start[lists.length]!);
  for (let k = 0; k < lists.length; k++) of.set(lists[k]!, start[k]!);
  return { start, of };
};

/** By `Cell`: which of these sets it lies in. */
export const indexOf = (sets: readonly { readonly cells: readonly Cell[] }[], size: number): number[][] => {
  const index = Array.from({ length: size }, (): number[] => []);
  for (let k = 0; k < sets.length; k++)
    for (const cell of sets[k]!.cells) if (index[cell]!.at(-1) !== k) index[cell]!.push(k);
  return index;
};

const union = (cells: readonly Cell[], domains: Int32Array): Digits =>
  cells.reduce((all, cell) => all | domains[cell]!, 0) as Digits;

const completeOf = (sets: readonly Unlike[], domains: Int32Array): Complete[] => {
  const found = new Map<string, Complete>();
  for (const { cells, digits = union(cells, domains), family } of sets) {
    if (count(digits) !== cells.length) continue;
    const key = [...cells].sort((a, b) => a - b).join();
    if (!found.has(key)) found.set(key, { cells, digits, ...(family === undefined ? {} : { family }) });
  }
  return [...found.values()];
};

/** By `Cell`: the others with which it lies in one of the sets, ascending. */
const togetherIn = (sets: readonly { readonly cells: readonly Cell[] }[], size: number): Cell[][] => {
  const seenBy = new Int32Array(size).fill(-1);
  return indexOf(sets, size).map((own, cell) => {
    seenBy[cell] = cell;
    const others: Cell[] = [];
    for (const set of own)
      for (const other of sets[set]!.cells) {
        if (seenBy[other] === cell) continue;
        seenBy[other] = cell;
        others.push(other);
      }
    return others.sort((a, b) => a - b);
  });
};

const placesOf = (complete: readonly Complete[], domains: Int32Array, stride: number): Int32Array => {
  const places = new Int32Array(complete.length * stride);
  for (const [set, { cells }] of complete.entries())
    for (const cell of cells)
      for (let rest = domains[cell]!; rest !== 0; rest &= rest - 1)
        places[set * stride + 31 - Math.clz32(rest & -rest)]! += place + cell;
  return places;
};

/** The layout of these sets; `all` are the digits that each cell can hold, by `Cell`. */
export const layoutOf = (sets: readonly Unlike[], all: readonly Digits[]): Layout => {
  const size = all.length;
  const domains = Int32Array.from(all);
  const complete = completeOf(sets, domains);
  for (const { cells, digits } of complete) for (const cell of cells) domains[cell]! &= digits;
  const peers = togetherIn(sets, size);
  const close = togetherIn(complete, size);
  const stride = max(domains.reduce((seen, digits) => seen | digits, 1) as Digits) + 1;
  return {
    domains,
    complete,
    peers,
    setsOf: listsOf(indexOf(complete, size)),
    cellsOf: listsOf(complete.map(({ cells }) => cells)),
    loose: listsOf(
      peers.map((cells, cell) => (cells.length === close[cell]!.length ? [] : without(cells, close[cell]!))),
    ),
    stride,
    places: placesOf(complete, domains, stride),
    losses: domains.reduce((sum, digits) => sum + count(digits as Digits), 0),
  };
};

const without = (cells: readonly Cell[], some: readonly Cell[]): Cell[] => cells.filter((cell) => !some.includes(cell));
