import type { Digits } from "../board/digits.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { propagatorOf } from "../terms/registry.ts";
import type { Domains, Propagator } from "../terms/term.ts";
import { equationPropagator } from "./equation.ts";
import { indexOf, listsOf, place } from "./layout.ts";
import { leftoversOf } from "./leftovers.ts";
import type { Model } from "./model.ts";

/** The state of a search: domains that only narrow, and can be taken back to a mark. */
export interface Narrowing {
  /** By `Cell`: the digits still possible. */
  readonly now: Int32Array;
  /** By `Cell`: 1 and how often what binds it has failed. */
  readonly weights: Float64Array;
  /** The cells that are not settled: the first `openCount()` of them, in no order. */
  readonly open: Int32Array;
  openCount(): number;
  /** Keeps of the cell's digits only these; false when that leaves a cell or a digit of a complete set nowhere to go. */
  keep(cell: Cell, digits: number): boolean;
  /** Works out everything that follows; false when nothing is left. */
  settle(): boolean;
  mark(): number;
  undo(mark: number): void;
}

/** What is called when one of its cells changes. */
interface Constraint {
  readonly cells: readonly Cell[];
  /** Lower ranks are called first. */
  readonly rank: number;
  readonly narrow: Propagator;
}

const ranks = 2;
const slow: ReadonlySet<string> = new Set(["sum", "automaton", "table", "run", "same-digits", "classes"]);

/** A term's propagator narrows any domains, so that all searches of a board can use one. */
const sharedPropagatorOf = remembered(propagatorOf);

const constraintsOf = (model: Model, now: Int32Array): Constraint[] => [
  ...model.terms.map((term) => ({
    cells: term.cells,
    rank: slow.has(term.term) ? 1 : 0,
    narrow:
      term.term === "sum"
        ? equationPropagator({ ...term, weights: term.weights ?? term.cells.map(() => 1) }, model.peers, now)
        : sharedPropagatorOf(term),
  })),
  ...leftoversOf(
    model,
    model.terms.flatMap((term) =>
      term.term === "sum" && !term.weights ? [{ cells: term.cells, sum: term.equals }] : [],
    ),
  ).map((equation) => ({ cells: equation.cells, rank: 1, narrow: equationPropagator(equation, model.peers, now) })),
];

export const narrowingOf = (model: Model): Narrowing => {
  const { domains, stride, places: placesAtFirst, losses } = model.layout;
  const { start: setStart, of: setOf } = model.layout.setsOf;
  const { start: cellStart, of: cellOf } = model.layout.cellsOf;
  const { start: looseStart, of: looseOf } = model.layout.loose;
  const size = domains.length;
  const now = domains.slice();
  const weights = new Float64Array(size).fill(1);
  const constraints = model.terms.length === 0 ? [] : constraintsOf(model, now);
  const total = constraints.length;
  const { start: boundStart, of: boundOf } = listsOf(total === 0 ? [] : indexOf(constraints, size));

  const trail = new Int32Array(2 * losses);
  let top = 0;
  /** Cells settled whose peers have not been told yet. */
  const settled = new Int32Array(size);
  let told = 0;
  let toTell = 0;
  const open = new Int32Array(size);
  /** By `Cell`: where it is in `open`. */
  const openAt = new Int32Array(size);
  let openCount = size;
  /** As the layout's, now. */
  const places = placesAtFirst.slice();
  /** Places in `places` with one cell left that has not been given the digit yet. */
  const singles = new Int32Array(places.length);
  let singleCount = 0;
  /** The complete set that has no place for one of its digits; -1 when each has. */
  let full = -1;

  const queues = Array.from({ length: ranks }, () => new Int32Array(total + 1));
  const heads = new Int32Array(ranks);
  const tails = new Int32Array(ranks);
  const queued = new Uint8Array(total);

  const schedule = (constraint: number): void => {
    if (queued[constraint]) return;
    queued[constraint] = 1;
    const rank = constraints[constraint]!.rank;
    const tail = tails[rank]!;
    queues[rank]![tail] = constraint;
    tails[rank] = tail === total ? 0 : tail + 1;
  };
  const take = (rank: number): number => {
    const head = heads[rank]!;
    heads[rank] = head === total ? 0 : head + 1;
    return queues[rank]![head]!;
  };

  const swapOpen = (a: number, b: number): void => {
    const [one, other] = [open[a]!, open[b]!];
    open[a] = other;
    openAt[other] = a;
    open[b] = one;
    openAt[one] = b;
  };
  /** Takes lost digits of a cell out of its sets' places. */
  const lose = (cell: Cell, lost: number): void => {
    const end = setStart[cell + 1]!;
    for (let rest = lost; rest !== 0; rest &= rest - 1) {
      const digit = 31 - Math.clz32(rest & -rest);
      for (let k = setStart[cell]!; k < end; k++) {
        const at = setOf[k]! * stride + digit;
        const left = places[at]! - place - cell;
        places[at] = left;
        if (left >= 2 * place) continue;
        if (left < place) full = setOf[k]!;
        else if ((now[left - place]! & (now[left - place]! - 1)) !== 0) singles[singleCount++] = at;
      }
    }
  };
  const regain = (cell: Cell, lost: number): void => {
    const end = setStart[cell + 1]!;
    for (let rest = lost; rest !== 0; rest &= rest - 1) {
      const digit = 31 - Math.clz32(rest & -rest);
      for (let k = setStart[cell]!; k < end; k++) places[setOf[k]! * stride + digit]! += place + cell;
    }
  };

  const narrow = (cell: Cell, digits: number): boolean => {
    const was = now[cell]!;
    const left = was & digits;
    if (left === was) return left !== 0;
    if (left === 0) return false;
    trail[top++] = cell;
    trail[top++] = was;
    now[cell] = left;
    if ((left & (left - 1)) === 0) {
      settled[toTell++] = cell;
      swapOpen(openAt[cell]!, --openCount);
    }
    lose(cell, was ^ left);
    if (total > 0) for (let k = boundStart[cell]!; k < boundStart[cell + 1]!; k++) schedule(boundOf[k]!);
    return full < 0;
  };
  const domainsNow: Domains = { at: (cell) => now[cell] as Digits, keep: narrow };

  const blame = (cells: ArrayLike<Cell>, from = 0, end = cells.length): void => {
    for (let k = from; k < end; k++) weights[cells[k]!]! += 1;
  };
  /** The other lost its last digit to the cell, or a set the last place of one. */
  const clash = (cell: Cell, other: Cell): false => {
    if (full < 0) {
      weights[other]! += 1;
      weights[cell]! += 1;
    }
    return false;
  };
  /** What a settled cell leaves to those that share a complete set with it: few have the digit where few places are left. */
  const tellSet = (cell: Cell, set: number, digit: number): boolean => {
    const others = places[set * stride + 31 - Math.clz32(digit)]! - place - cell;
    if (others < place) return true;
    if (others < 2 * place) return narrow(others - place, ~digit) || clash(cell, others - place);
    const end = cellStart[set + 1]!;
    for (let k = cellStart[set]!; k < end; k++) {
      const other = cellOf[k]!;
      if ((now[other]! & digit) !== 0 && other !== cell && !narrow(other, ~digit)) return clash(cell, other);
    }
    return true;
  };
  const tell = (cell: Cell): boolean => {
    const digit = now[cell]!;
    for (let k = setStart[cell]!; k < setStart[cell + 1]!; k++) if (!tellSet(cell, setOf[k]!, digit)) return false;
    for (let k = looseStart[cell]!; k < looseStart[cell + 1]!; k++) {
      const other = looseOf[k]!;
      if ((now[other]! & digit) !== 0 && !narrow(other, ~digit)) return clash(cell, other);
    }
    return true;
  };
  /** Gives the only place left for a digit that digit. */
  const fill = (at: number): boolean => {
    const cell = places[at]! - place;
    if (narrow(cell, 1 << (at % stride))) return true;
    if (full < 0) weights[cell]! += 1;
    return false;
  };
  const call = (constraint: number): boolean => {
    const held = constraints[constraint]!.narrow(domainsNow);
    // A term leaves nothing that it would narrow further at once.
    queued[constraint] = 0;
    if (!held && full < 0) blame(constraints[constraint]!.cells);
    return held;
  };
  const nextRank = (): number => {
    for (let rank = 0; rank < ranks; rank++) if (heads[rank] !== tails[rank]) return rank;
    return -1;
  };
  /** What waits is dropped, for it comes of what will be taken back. */
  const fail = (): false => {
    if (full >= 0) blame(cellOf, cellStart[full]!, cellStart[full + 1]!);
    full = -1;
    toTell = told = singleCount = 0;
    for (let rank = 0; rank < ranks; rank++) while (heads[rank] !== tails[rank]) queued[take(rank)] = 0;
    return false;
  };
  const settle = (): boolean => {
    if (broken) return false;
    for (;;) {
      if (told < toTell) {
        if (!tell(settled[told++]!)) return fail();
      } else if (singleCount > 0) {
        toTell = told = 0;
        if (!fill(singles[--singleCount]!)) return fail();
      } else {
        toTell = told = 0;
        const rank = total === 0 ? -1 : nextRank();
        if (rank < 0) return true;
        if (!call(take(rank))) return fail();
      }
    }
  };

  const keep = (cell: Cell, digits: number): boolean => narrow(cell, digits) || fail();
  const undo = (mark: number): void => {
    while (top > mark) {
      const was = trail[--top]!;
      const cell = trail[--top]!;
      const left = now[cell]!;
      if ((left & (left - 1)) === 0) openCount++;
      now[cell] = was;
      regain(cell, was ^ left);
    }
  };

  for (let cell = 0; cell < size; cell++) open[cell] = openAt[cell] = cell;
  for (let cell = 0; cell < size; cell++)
    if ((now[cell]! & (now[cell]! - 1)) === 0) {
      settled[toTell++] = cell;
      swapOpen(openAt[cell]!, --openCount);
    }
  for (let at = 0; at < places.length; at++) {
    const left = places[at]!;
    if (left >= place && left < 2 * place && (now[left - place]! & (now[left - place]! - 1)) !== 0)
      singles[singleCount++] = at;
  }
  for (let constraint = 0; constraint < total; constraint++) schedule(constraint);
  const holds = model.domains.every((digits, cell) => narrow(cell, digits));
  const broken = !holds || now.includes(0) || hasNoPlace(model, places);
  return { now, weights, open, openCount: () => openCount, keep, settle, mark: () => top, undo };
};

/** Whether a complete set has no place for one of its digits. */
const hasNoPlace = ({ layout: { complete, stride } }: Model, places: Int32Array): boolean =>
  complete.some(({ digits }, set) => {
    for (let rest = digits as number; rest !== 0; rest &= rest - 1)
      if (places[set * stride + 31 - Math.clz32(rest & -rest)]! < place) return true;
    return false;
  });
