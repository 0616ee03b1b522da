import type { Board } from "../board/board.ts";
import { count, type Digits, isOne } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Domains } from "../terms/term.ts";
import { type Watcher, watchersOf } from "./watchers.ts";

/** Who took digits out of a cell, where it was no watcher: a trial that failed, the digit on trial, a settled cell. */
export const refuted = -1;
export const onTrial = -2;
const seen = -3;
export const seenFrom = (source: number): Cell | undefined => (source <= seen ? seen - source : undefined);

/** What happened, oldest first: a cell, the digits it had, who took some out, and where that one's doing began. */
export interface Happened {
  readonly cells: readonly Cell[];
  readonly were: readonly number[];
  readonly sources: readonly number[];
  readonly begins: readonly number[];
}

/** The whole board thought through at once: whatever the watchers see is applied until nothing changes, and can be taken back. */
export interface Machine {
  /** By `Cell`: the digits still possible, as bits. */
  readonly now: Int32Array;
  readonly happened: Happened;
  /** By `Cell`: 1 and how often nothing was left of what somebody watches that has this cell. */
  readonly weights: Float64Array;
  /** Who saw that nothing is left, and where its doing began. */
  readonly clash: { readonly source: number; readonly begin: number } | undefined;
  /** Forgets everything and starts from these digits, `unseen` before anybody looks; false where nothing is left. */
  start(possible: readonly Digits[], unseen?: boolean): boolean;
  /** Sets a digit on trial and lets everybody look; `quickly`: only those whose looks take no thought. */
  attempt(cell: Cell, digit: number, quickly?: boolean): boolean;
  /** Takes a digit out that was refuted and lets everybody look. */
  refute(cell: Cell, digit: number): boolean;
  mark(): number;
  undo(mark: number): void;
  /** This watcher is not called any more: what it says can't be proved. */
  silence(watcher: number): void;
}

const ranks = 6;
/** Looks of this rank and above take thought. */
const thought = 5;

const watching = (size: number, watchers: readonly Watcher[]): Int32Array[] => {
  const lists = Array.from({ length: size }, (): number[] => []);
  for (const [w, { cells }] of watchers.entries()) for (const cell of cells) lists[cell]!.push(w);
  return lists.map((list) => Int32Array.from(list));
};

export const machineOf = (board: Board): Machine => {
  const watchers = watchersOf(board);
  const size = board.domains.length;
  const now = new Int32Array(size);
  const watched = watching(size, watchers);
  const weights = new Float64Array(size).fill(1);
  const [cells, were, sources, begins]: [number[], number[], number[], number[]] = [[], [], [], []];
  const queues = Array.from({ length: ranks }, (): number[] => []);
  const isDue = new Uint8Array(watchers.length);
  const isSilent = new Uint8Array(watchers.length);
  const toTell: Cell[] = [];
  let caller = refuted;
  let begin = 0;
  let clash: Machine["clash"];

  const keep = (cell: Cell, digits: number): boolean => {
    const was = now[cell]!;
    const left = was & digits;
    if (left === was) return left !== 0;
    cells.push(cell);
    were.push(was);
    sources.push(caller);
    begins.push(begin);
    now[cell] = left;
    if (left === 0) return false;
    if (isOne(left as Digits)) toTell.push(cell);
    const due = watched[cell]!;
    for (let k = 0; k < due.length; k++) {
      const w = due[k]!;
      if (isDue[w]) continue;
      isDue[w] = 1;
      queues[watchers[w]!.rank]!.push(w);
    }
    return true;
  };
  const domains: Domains = { at: (cell) => now[cell] as Digits, keep };

  const calling = (source: number): void => {
    caller = source;
    begin = cells.length;
  };
  const tell = (cell: Cell): boolean => {
    const digit = now[cell]!;
    const others = board.sees[cell]!;
    for (let k = 0; k < others.length; k++) {
      if ((now[others[k]!]! & digit) === 0) continue;
      calling(seen - cell);
      if (!keep(others[k]!, ~digit)) return false;
    }
    return true;
  };
  const nextDue = (quickly: boolean): number | undefined => {
    for (let rank = 0; rank < (quickly ? thought : ranks); rank++)
      if (queues[rank]!.length > 0) return queues[rank]!.shift();
    return undefined;
  };
  const stop = (): void => {
    toTell.length = 0;
    for (const queue of queues) {
      for (const w of queue) isDue[w] = 0;
      queue.length = 0;
    }
  };
  const broken = (): false => {
    clash = { source: caller, begin };
    for (const cell of watchers[caller]?.cells ?? [cells.at(-1)!]) weights[cell]!++;
    stop();
    return false;
  };
  const settle = (quickly = false): boolean => {
    for (;;) {
      while (toTell.length > 0) if (!tell(toTell.shift()!)) return broken();
      const w = nextDue(quickly);
      if (w === undefined) {
        if (quickly) stop();
        return true;
      }
      const watcher = watchers[w]!;
      isDue[w] = watcher.isExact ? 1 : 0;
      calling(w);
      const fine = isSilent[w] || watcher.narrow(domains);
      isDue[w] = watcher.isExact ? 0 : isDue[w]!;
      if (!fine) return broken();
    }
  };
  const undo = (mark: number): void => {
    while (cells.length > mark) {
      now[cells.pop()!] = were.pop()!;
      sources.pop();
      begins.pop();
    }
    clash = undefined;
  };
  const narrowed = (cell: Cell, digits: number, source: number, quickly = false): boolean => {
    calling(source);
    if (!keep(cell, digits)) return broken();
    return settle(quickly);
  };
  return {
    now,
    weights,
    happened: { cells, were, sources, begins },
    get clash() {
      return clash;
    },
    start: (possible, unseen = false) => {
      undo(0);
      now.set(possible);
      if (unseen || now.includes(0)) return !now.includes(0);
      for (let cell = 0; cell < size; cell++) if (isOne(now[cell] as Digits)) toTell.push(cell);
      for (let w = 0; w < watchers.length; w++) {
        if (isDue[w]) continue;
        isDue[w] = 1;
        queues[watchers[w]!.rank]!.push(w);
      }
      return settle();
    },
    attempt: (cell, digit, quickly) => narrowed(cell, 1 << digit, onTrial, quickly),
    refute: (cell, digit) => narrowed(cell, ~(1 << digit), refuted),
    mark: () => cells.length,
    undo,
    silence: (w) => {
      isSilent[w] = 1;
    },
  };
};

/** How open a state is: the sum of its cells' digits as powers of two. */
export const opennessOf = (now: Int32Array): number => {
  let open = 0;
  for (let cell = 0; cell < now.length; cell++) open += Math.log2(count(now[cell] as Digits));
  return open;
};
