import type { Board } from "../board/board.ts";
import { type Digits, has, isOne, min } from "../board/digits.ts";
import type { Knowledge } from "../board/knowledge.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction } from "./deduction.ts";
import type { Judge } from "./judge.ts";
import { type Machine, machineOf, opennessOf } from "./machine.ts";
import { retraced } from "./retrace.ts";
import { toldTrials } from "./retry.ts";
import { failing, filling, firstOf, type Look, lookAt, looksAround, type Trial } from "./trials.ts";
import { triedStep } from "./tried.ts";

/** What is remembered between the what-ifs of one chain. */
interface Memory {
  machine?: Machine;
  /** Assumptions that failed at once when they were last looked at: they still do when more is known. */
  failing: readonly Look[];
  /** Digits that fill the board without a fault: there is nothing to be refuted about them. */
  filled?: Int32Array;
}

const memoryOf = remembered((_: Judge): Memory => ({ failing: [] }));

interface Context {
  readonly board: Board;
  readonly judge: Judge;
  readonly machine: Machine;
  readonly memory: Memory;
  /** What the machine sees before a digit is tried is left aside. */
  readonly unseen?: true;
}

/** The what-if that tells why this digit fails, these trials within it; undefined where that can't be proved. */
function* told(
  knowledge: Knowledge,
  { cell, digit, inner }: Trial,
  { board, judge, machine, unseen }: Context,
): Generator<void, Deduction | undefined> {
  const retracing = { machine, board, judge, refutations: new Map<number, Deduction>() };
  const fine = machine.attempt(cell, digit);
  const found = fine ? yield* toldTrials(inner, 0, retracing) : yield* retraced(0, retracing);
  if ("source" in found) {
    if (found.source !== undefined && found.source >= 0) machine.silence(found.source);
    machine.start(knowledge.possible, unseen);
    return undefined;
  }
  machine.start(knowledge.possible, unseen);
  const step = triedStep({ board, trial: [cell, digit], outside: knowledge.possible }, found.steps);
  return judge.holds(step) ? step : undefined;
}

const isOpen = (machine: Machine, { cell, digit }: { readonly cell: Cell; readonly digit: number }): boolean =>
  !isOne(machine.now[cell] as Digits) && has(machine.now[cell]! as Digits, digit);

/** Those that fail at once, the one with the shortest way to nothing left first. */
const failingOf = (looks: readonly Look[]): Look[] =>
  looks.filter(({ open }) => open < 0).sort((a, b) => a.happened - b.happened);

/** So many assumptions that fail are told before the one with the fewest steps is taken. */
const worthComparing = 3;
const shortEnough = 3;

function* shortest(
  knowledge: Knowledge,
  looks: readonly Look[],
  context: Context,
): Generator<void, Deduction | undefined> {
  let best: Deduction | undefined;
  let compared = 0;
  for (const { cell, digit } of looks) {
    yield;
    if (compared >= worthComparing || (best && best.steps!.length <= shortEnough)) break;
    const step = yield* told(knowledge, { cell, digit, inner: [] }, context);
    if (!step) continue;
    compared++;
    if (!best || step.steps!.length < best.steps!.length) best = step;
  }
  return best;
}

/**
 * What fails at once where nobody has looked yet. The machine sees more than a ladder that lacks some techniques; what it
 * has seen no longer needs to be tried, but nobody has told it.
 */
function* fromUnseen(knowledge: Knowledge, context: Context): Generator<void, Deduction | undefined> {
  context.machine.start(knowledge.possible, true);
  const looks = failingOf(yield* looksAround(context.machine));
  const found = yield* shortest(knowledge, looks, { ...context, unseen: true });
  context.machine.start(knowledge.possible);
  return found;
}

/** So often a trial is gone through anew when some of it could not be proved, or turns out to fill the board. */
const mostAgain = 20;

/** Notes digits that fill the board: whoever judges must know that they can be. */
const fill = (filled: Int32Array, { board, judge, memory }: Context): void => {
  memory.filled = memory.filled?.map((digits, cell) => digits | filled[cell]!) ?? filled;
  const digits = [...filled.entries()].map(([cell, set]) => [board.canvas.names[cell]!, min(set as Digits)]);
  judge.suppose(Object.fromEntries(digits));
};

/** One digit after the other of a cell, with as many trials within as that takes. */
function* nested(
  knowledge: Knowledge,
  looks: readonly Look[],
  context: Context,
): Generator<void, Deduction | undefined> {
  const { machine, memory } = context;
  if (!memory.filled) {
    const filled = yield* filling(machine);
    if (!filled) return undefined;
    fill(filled, context);
  }
  for (let again = 0; again < mostAgain; again++) {
    const wrong = looks.filter(({ cell, digit }) => !has(memory.filled![cell]! as Digits, digit));
    const first = firstOf(wrong, opennessOf(machine.now));
    if (!first) return undefined;
    const step = yield* refutation(knowledge, first, context);
    if (step) return step;
  }
  return undefined;
}

/** Goes on until the digit has failed, or until it turns out to fill the board. */
function* refutation(
  knowledge: Knowledge,
  { cell, digit }: { readonly cell: Cell; readonly digit: number },
  context: Context,
): Generator<void, Deduction | undefined> {
  const { machine } = context;
  const mark = machine.mark();
  const inner = machine.attempt(cell, digit) ? yield* failing(machine) : [];
  if (!("filled" in inner)) {
    machine.undo(mark);
    return yield* told(knowledge, { cell, digit, inner }, context);
  }
  machine.undo(mark);
  fill(inner.filled, context);
  return undefined;
}

export interface WhatIf {
  readonly board: Board;
  readonly judge: Judge;
  /** The highest level wanted. */
  readonly level: number;
  /** Only what fails at once, no trials within trials. */
  readonly isShallow?: boolean;
}

const contextOf = ({ board, judge }: Pick<WhatIf, "board" | "judge">): Context => {
  const memory = memoryOf(judge);
  const machine = memory.machine ?? machineOf(board);
  memory.machine = machine;
  return { board, judge, machine, memory };
};

/** Why this one digit fails in its cell, however long that takes; undefined where it does not, or can't be proved. */
export function* refuting(
  knowledge: Knowledge,
  trial: { readonly cell: Cell; readonly digit: number },
  about: Pick<WhatIf, "board" | "judge">,
): Generator<void, Deduction | undefined> {
  const context = contextOf(about);
  if (!context.machine.start(knowledge.possible)) return undefined;
  if (!context.memory.filled) {
    const filled = yield* filling(context.machine);
    if (filled) fill(filled, context);
  }
  if (context.memory.filled && has(context.memory.filled[trial.cell]! as Digits, trial.digit)) return undefined;
  for (let again = 0; again < mostAgain && isOpen(context.machine, trial); again++) {
    const step = yield* refutation(knowledge, trial, context);
    if (step || has((context.memory.filled?.[trial.cell] ?? 0) as Digits, trial.digit)) return step;
  }
  return undefined;
}

/**
 * The last resort: a digit is tried in a cell, and what follows contradicts itself. Of those that fail at once one with a
 * short proof is taken; where nothing does, trials within trials are gone through until something has failed, which it
 * always does where the board can be filled in one way only. Undefined where nothing of the wanted level is found.
 */
export function* whatIf(
  knowledge: Knowledge,
  { board, judge, level, isShallow = false }: WhatIf,
): Generator<void, Deduction | undefined> {
  const context = contextOf({ board, judge });
  const { machine, memory } = context;
  if (level < 4 || !machine.start(knowledge.possible)) return undefined;
  const again = memory.failing.filter((one) => isOpen(machine, one));
  const known = failingOf(again.map(({ cell, digit }) => lookAt(machine, cell, digit)));
  const looks = known.length > 0 ? known : yield* looksAround(machine);
  memory.failing = failingOf(looks);
  const found = yield* shortest(knowledge, memory.failing, context);
  if (found && found.level <= level) return found;
  const plain = machine.mark() > 0 ? yield* fromUnseen(knowledge, context) : undefined;
  if (plain && plain.level <= level) return plain;
  if (level < 5 || isShallow) return undefined;
  return yield* nested(knowledge, known.length > 0 ? yield* looksAround(machine) : looks, context);
}
