import { count, type Digits, isOne, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Machine, opennessOf } from "./machine.ts";

/** A digit that is tried in a cell, and the trials within that it takes until nothing is left; none where it fails at once. */
export interface Trial {
  readonly cell: Cell;
  readonly digit: number;
  readonly inner: readonly Trial[];
}

/** What a trial comes to at a first look. */
export interface Look {
  readonly cell: Cell;
  readonly digit: number;
  /** How open the board is afterwards; less than 0 where nothing is left. */
  readonly open: number;
  /** How many times a cell lost digits. */
  readonly happened: number;
}

/** So many cells, those with the fewest digits, are looked at before one is chosen. */
const mostLooks = 12;
/** How much less open the board must be for a trial to count half. */
const halving = 2.5;

export const lookAt = (machine: Machine, cell: Cell, digit: number): Look => {
  const mark = machine.mark();
  const open = machine.attempt(cell, digit, true) ? opennessOf(machine.now) : -1;
  const happened = machine.mark() - mark;
  machine.undo(mark);
  return { cell, digit, open, happened };
};

/** Every trial that is open, cell by cell. */
export function* looksAround(machine: Machine): Generator<void, Look[]> {
  const looks: Look[] = [];
  for (const cell of machine.now.keys()) {
    if (isOne(machine.now[cell] as Digits)) continue;
    yield;
    for (const digit of listOf(machine.now[cell] as Digits)) looks.push(lookAt(machine, cell, digit));
  }
  return looks;
}

const worthOf = (looks: readonly Look[], open: number): number =>
  looks.reduce((sum, look) => sum + (look.open < 0 ? 0 : 2 ** ((look.open - open) / halving)), 0);

/** The cell whose digits, one after the other, are soonest done with; undefined where all are settled. */
function* chosen(machine: Machine): Generator<void, { cell: Cell; looks: Look[] } | undefined> {
  const { now } = machine;
  const open = opennessOf(now);
  const cells = [...now.keys()]
    .filter((cell) => !isOne(now[cell] as Digits))
    .sort((a, b) => count(now[a] as Digits) - count(now[b] as Digits) || a - b)
    .slice(0, mostLooks);
  let best: { cell: Cell; looks: Look[]; worth: number } | undefined;
  for (const cell of cells) {
    const looks = listOf(now[cell] as Digits).map((digit) => lookAt(machine, cell, digit));
    yield;
    const worth = worthOf(looks, open);
    if (!best || worth < best.worth) best = { cell, looks, worth };
    if (worth === 0) break;
  }
  best?.looks.sort((a, b) => a.open - b.open);
  return best;
}

/** Digits that fill the board without a fault, by `Cell` as bits. */
export interface Filled {
  readonly filled: Int32Array;
}

/**
 * From a state with something open to nothing left: cell by cell each digit is tried, and taken out when it fails, until
 * the last one that is left fails too; or the first filling that is come upon.
 */
export function* failing(machine: Machine): Generator<void, Trial[] | Filled> {
  const trials: Trial[] = [];
  for (;;) {
    const choice = yield* chosen(machine);
    if (!choice) return { filled: machine.now.slice() };
    const { cell, looks } = choice;
    for (const { digit } of looks) {
      if (isOne(machine.now[cell] as Digits)) break;
      const mark = machine.mark();
      const inner: Trial[] | Filled = machine.attempt(cell, digit) ? yield* failing(machine) : [];
      machine.undo(mark);
      if ("filled" in inner) return inner;
      trials.push({ cell, digit, inner });
      if (!machine.refute(cell, digit)) return trials;
    }
  }
}

const firstLeash = 100;

/** The fewest digits for its weight come first. */
const priority = ({ now, weights }: Machine, cell: Cell): number => count(now[cell] as Digits) / weights[cell]!;

/** Goes down digit by digit until the board is filled or nothing is left anywhere; undefined where the leash ends. */
function* dive(machine: Machine, leash: { left: number }): Generator<void, boolean | undefined> {
  const { now } = machine;
  const open = [...now.keys()].filter((cell) => !isOne(now[cell] as Digits));
  if (open.length === 0) return true;
  const cell = open.reduce((a, b) => (priority(machine, b) < priority(machine, a) ? b : a));
  for (;;) {
    yield;
    if (leash.left-- <= 0) return undefined;
    const digit = listOf(now[cell] as Digits)[0]!;
    const mark = machine.mark();
    const found = machine.attempt(cell, digit, true) ? yield* dive(machine, leash) : false;
    if (found !== false) return found;
    machine.undo(mark);
    if (!machine.refute(cell, digit)) return false;
    if (isOne(now[cell] as Digits)) return yield* dive(machine, leash);
  }
}

/**
 * Digits that fill the board without a fault, by `Cell` as bits; undefined where there are none. What fails often comes
 * first when it starts again.
 */
export function* filling(machine: Machine): Generator<void, Int32Array | undefined> {
  const mark = machine.mark();
  for (let leash = firstLeash; ; leash *= 2) {
    const found = yield* dive(machine, { left: leash });
    const filled = machine.now.slice();
    machine.undo(mark);
    if (found !== undefined) return found ? filled : undefined;
  }
}

/** How much less open the board must be for what a trial takes within to be half as much. */
const halvingAll = 9;
/** A trial that leaves the board so much less open is soon done with. */
const soonDone = 40;

const costOf = (looks: readonly Look[], open: number): number => {
  const least = Math.min(...looks.map((look) => look.open));
  if (open - least > soonDone) return least - open;
  return looks.reduce((sum, look) => sum + 2 ** ((look.open - open) / halvingAll), 0);
};

/**
 * Which of these trials to begin with: one that is soon done with, or else one in the cell that is; of each cell only
 * digits that are to be refuted are among them.
 */
export const firstOf = (looks: readonly Look[], open: number): Look | undefined => {
  const byCell = new Map<Cell, Look[]>();
  for (const look of looks) byCell.set(look.cell, [...(byCell.get(look.cell) ?? []), look]);
  let best: { looks: readonly Look[]; cost: number } | undefined;
  for (const of of byCell.values()) {
    const cost = costOf(of, open);
    if (!best || cost < best.cost) best = { looks: of, cost };
  }
  return best?.looks.reduce((a, b) => (b.open < a.open ? b : a));
};
