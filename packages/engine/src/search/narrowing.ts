import type { Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { propagatorOf } from "../terms/registry.ts";
import type { Domains, Propagator } from "../terms/term.ts";
import { equationPropagator } from "./equation.ts";
import { leftoversOf } from "./leftovers.ts";
import type { Complete, Model } from "./model.ts";

/** The state of a search: domains that only narrow, and can be taken back to a mark. */
export interface Narrowing {
  /** By `Cell`: the digits still possible. */
  readonly now: Int32Array;
  /** By `Cell`: 1 and how often what binds it has failed. */
  readonly weights: Float64Array;
  /** Keeps of the cell's digits only these; false when none is left. */
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

const ranks = 3;
const slow: ReadonlySet<string> = new Set(["sum", "automaton", "table", "run", "same-digits", "classes"]);

/** The only place left for a digit. */
const singles = ({ cells, digits }: Complete, now: Int32Array): Propagator => {
  const places = Int32Array.from(cells);
  return (domains) => {
    let once = 0;
    let twice = 0;
    let settled = 0;
    for (let k = 0; k < places.length; k++) {
      const set = now[places[k]!]!;
      twice |= once & set;
      once |= set;
      if ((set & (set - 1)) === 0) settled |= set;
    }
    if (once !== digits) return false;
    const single = once & ~twice & ~settled;
    if (single === 0) return true;
    for (let k = 0; k < places.length; k++) {
      const hit = now[places[k]!]! & single;
      if (hit !== 0 && ((hit & (hit - 1)) !== 0 || !domains.keep(places[k]!, hit as Digits))) return false;
    }
    return true;
  };
};

const indexed = (size: number, constraints: readonly Constraint[]): { start: Int32Array; of: Int32Array } => {
  const lists = Array.from({ length: size }, (): number[] => []);
  for (const [index, { cells }] of constraints.entries()) for (const cell of new Set(cells)) lists[cell]!.push(index);
  const start = new Int32Array(size + 1);
  for (const [cell, list] of lists.entries()) start[cell + 1] = start[cell]! + list.length;
  return { start, of: Int32Array.from(lists.flat()) };
};

export const narrowingOf = (model: Model): Narrowing => {
  const size = model.domains.length;
  const now = Int32Array.from(model.domains);
  const weights = new Float64Array(size).fill(1);
  const peers = model.peers.map((cells) => Int32Array.from(cells));
  const constraints: Constraint[] = [
    ...model.complete.map((set) => ({ cells: set.cells, rank: 0, narrow: singles(set, now) })),
    ...model.terms.map((term) => ({
      cells: term.cells,
      rank: slow.has(term.term) ? 2 : 1,
      narrow:
        term.term === "sum"
          ? equationPropagator({ ...term, weights: term.weights ?? term.cells.map(() => 1) }, model.peers, now)
          : propagatorOf(term),
    })),
    ...leftoversOf(
      model,
      model.terms.flatMap((term) =>
        term.term === "sum" && !term.weights ? [{ cells: term.cells, sum: term.equals }] : [],
      ),
    ).map((equation) => ({
      cells: equation.cells,
      rank: 2,
      narrow: equationPropagator(equation, model.peers, now),
    })),
  ];
  const total = constraints.length;
  const index = indexed(size, constraints);
  const rankOf = Uint8Array.from(constraints, ({ rank }) => rank);
  const narrow = constraints.map((constraint) => constraint.narrow);

  const trailCell: number[] = [];
  const trailWas: number[] = [];
  /** Cells settled whose peers have not been told yet. */
  const settled = new Int32Array(size);
  let told = 0;
  let toTell = 0;
  const queues = Array.from({ length: ranks }, () => new Int32Array(total + 1));
  const heads = new Int32Array(ranks);
  const tails = new Int32Array(ranks);
  const queued = new Uint8Array(total);

  const schedule = (constraint: number): void => {
    if (queued[constraint]) return;
    queued[constraint] = 1;
    const rank = rankOf[constraint]!;
    const tail = tails[rank]!;
    queues[rank]![tail] = constraint;
    tails[rank] = tail === total ? 0 : tail + 1;
  };
  const take = (rank: number): number => {
    const head = heads[rank]!;
    heads[rank] = head === total ? 0 : head + 1;
    return queues[rank]![head]!;
  };

  const keep = (cell: Cell, digits: number): boolean => {
    const was = now[cell]!;
    const left = was & digits;
    if (left === was) return left !== 0;
    if (left === 0) return false;
    trailCell.push(cell);
    trailWas.push(was);
    now[cell] = left;
    if ((left & (left - 1)) === 0) settled[toTell++] = cell;
    for (let k = index.start[cell]!; k < index.start[cell + 1]!; k++) schedule(index.of[k]!);
    return true;
  };
  const domains: Domains = { at: (cell) => now[cell] as Digits, keep };

  const tellPeers = (cell: Cell): boolean => {
    const others = peers[cell]!;
    const digit = now[cell]!;
    for (let k = 0; k < others.length; k++) {
      const other = others[k]!;
      if ((now[other]! & digit) !== 0 && !keep(other, ~digit)) {
        weights[other]! += 1;
        weights[cell]! += 1;
        return false;
      }
    }
    return true;
  };
  const call = (constraint: number): boolean => {
    // A term leaves nothing that it would narrow further at once; singles may find more after their own find.
    const callsItself = rankOf[constraint]! === 0;
    if (callsItself) queued[constraint] = 0;
    const held = narrow[constraint]!(domains);
    if (!callsItself) queued[constraint] = 0;
    if (!held) for (const cell of constraints[constraint]!.cells) weights[cell]! += 1;
    return held;
  };
  const nextRank = (): number => {
    for (let rank = 0; rank < ranks; rank++) if (heads[rank] !== tails[rank]) return rank;
    return -1;
  };
  const clear = (): void => {
    toTell = told = 0;
    for (let rank = 0; rank < ranks; rank++) while (heads[rank] !== tails[rank]) queued[take(rank)] = 0;
  };
  const settle = (): boolean => {
    if (broken) return false;
    for (;;) {
      while (told < toTell)
        if (!tellPeers(settled[told++]!)) {
          clear();
          return false;
        }
      toTell = told = 0;
      const rank = nextRank();
      if (rank < 0) return true;
      if (!call(take(rank))) {
        clear();
        return false;
      }
    }
  };

  const broken = now.includes(0);
  const undo = (mark: number): void => {
    while (trailCell.length > mark) now[trailCell.pop()!] = trailWas.pop()!;
  };
  for (let cell = 0; cell < size; cell++) if ((now[cell]! & (now[cell]! - 1)) === 0) settled[toTell++] = cell;
  for (let constraint = 0; constraint < total; constraint++) schedule(constraint);
  return { now, weights, keep, settle, mark: () => trailCell.length, undo };
};
