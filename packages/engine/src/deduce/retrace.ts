import type { Board } from "../board/board.ts";
import { type Digits, either, has, isOne, listOf, min, none, only, without } from "../board/digits.ts";
import type { Knowledge } from "../board/knowledge.ts";
import { linksBetween } from "../board/links.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction } from "./deduction.ts";
import type { Judge } from "./judge.ts";
import { type Machine, onTrial, refuted, seenFrom } from "./machine.ts";
import { contradicting, gathering, placing } from "./reasons.ts";
import { shrink } from "./shrink.ts";
import { nakedPair, nakedQuad, nakedTriple } from "./techniques/naked-set.ts";
import { wellNamed } from "./trace.ts";
import { leaner } from "./tried.ts";
import { watchersOf } from "./watchers.ts";
import { gatherWhyNone } from "./why-not.ts";

/** What is needed to follow a machine's doings back to their reasons. */
export interface Retracing {
  readonly machine: Machine;
  readonly board: Board;
  readonly judge: Judge;
  /** By where it happened: the step that took out a digit that had been refuted. */
  readonly refutations: ReadonlyMap<number, Deduction>;
}

/** Steps to a contradiction, each small and proved, and whether they lean on the digit on trial. */
export interface Retraced {
  readonly steps: readonly Deduction[];
  readonly usesTrial: boolean;
}

/** What this one said can't be proved; nobody's, where nothing clashes any more. */
export interface Unproved {
  readonly source: number | undefined;
}

/** What a doing is needed for: digits gone from cells, and cells left with one. */
interface Needed {
  readonly removes: Map<Cell, Digits>;
  readonly places: Map<Cell, Digits>;
}

const sets = [nakedPair, nakedTriple, nakedQuad];

/** What all ways to fill a house agree on often has a plainer name. */
const renamed = (deduction: Deduction, board: Board): Deduction => {
  if (deduction.technique !== "house-cases" || deduction.removes.size === 0) return deduction;
  const plain = sets.find(({ fits }) => fits!(deduction.because, board, deduction));
  return plain ? { ...deduction, technique: plain.name, level: plain.level } : deduction;
};

/** Follows what a machine did since `base` (a mark) back from the present clash, or from steps that end in one. */
export function* retraced(
  base: number,
  retracing: Retracing,
  ending?: readonly Deduction[],
): Generator<void, Retraced | Unproved> {
  const { machine, board, judge, refutations } = retracing;
  const { cells, were, sources, begins } = machine.happened;
  const watchers = watchersOf(board);
  const possible = Array.from(machine.now) as Digits[];
  const needed = new Map<number, Needed>();
  let steps: Deduction[] = [];
  let usesTrial = false;

  const now = (): Knowledge => ({ possible: [...possible], settled: possible.map(isOne) });
  const need = (begin: number): Needed => {
    const known = needed.get(begin) ?? { removes: new Map(), places: new Map() };
    needed.set(begin, known);
    return known;
  };
  const digitsAt = (cell: Cell, end: number): Digits => {
    for (let k = end; k < cells.length; k++) if (cells[k] === cell) return were[k] as Digits;
    return machine.now[cell] as Digits;
  };
  /** Where the cell lost the digit, before `end`; undefined where that was before the base. */
  const lossOf = (cell: Cell, digit: number, end: number): number | undefined => {
    if (has(digitsAt(cell, end), digit)) return undefined;
    for (let k = end - 1; k >= base; k--) if (cells[k] === cell && has(were[k] as Digits, digit)) return k;
    return undefined;
  };
  const lastOf = (cell: Cell, end: number): number | undefined => {
    for (let k = end - 1; k >= base; k--) if (cells[k] === cell) return k;
    return undefined;
  };
  const wantGone = (cell: Cell, digits: Digits, end: number): void => {
    for (const digit of listOf(digits)) {
      const loss = lossOf(cell, digit, end);
      if (loss === undefined || seenFrom(sources[loss]!) !== undefined) continue;
      const { removes } = need(begins[loss]!);
      removes.set(cell, either(removes.get(cell) ?? none, only(digit)));
    }
  };
  const want = (cell: Cell, digits: Digits, end: number): void => {
    if (!isOne(possible[cell]!)) wantGone(cell, without(board.domains[cell]!, digits), end);
    else {
      const last = lastOf(cell, end);
      if (last !== undefined) need(begins[last]!).places.set(cell, possible[cell]!);
    }
  };
  /** Digits that went by sight since the base are put as what is seen. */
  const spelledOut = (deduction: Deduction, end: number): Deduction => {
    const because = gathering().all({ ...deduction.because, facts: new Map() });
    let changed = false;
    for (const [cell, digits] of deduction.because.facts) {
      let own: Digits = digits;
      for (const digit of isOne(possible[cell]!) ? [] : listOf(without(board.domains[cell]!, digits))) {
        const loss = lossOf(cell, digit, end);
        const from = loss === undefined ? undefined : seenFrom(sources[loss]!);
        if (from === undefined) continue;
        changed = true;
        own = either(own, only(digit));
        because.fact(from, only(digit)).link(linksBetween(board, cell, from)[0]!);
      }
      if (own !== board.domains[cell]) because.fact(cell, own);
    }
    const { counts } = deduction.because;
    return changed ? { ...deduction, because: { ...because.reasons, ...(counts ? { counts } : {}) } } : deduction;
  };
  const small = (deduction: Deduction, end: number): Deduction | undefined => {
    const shrunk = shrink(spelledOut(deduction, end), board, judge.holds);
    const named = shrunk && wellNamed(shrunk, board, judge);
    return named && renamed(named, board);
  };
  const take = (deduction: Deduction, end: number): void => {
    steps.unshift(deduction);
    for (const [cell, digits] of deduction.because.facts) want(cell, digits, end);
  };
  /** What is said can't be proved: if its reasons clash by themselves, everything after it is beside the point. */
  const restarted = (deduction: Deduction, begin: number): boolean => {
    const clash = small(contradicting(deduction.because), begin);
    if (!clash) return false;
    needed.clear();
    steps = [];
    usesTrial = false;
    take(clash, begin);
    return true;
  };
  /** The digit that is left in a cell after what was done up to `end`. */
  const noticing = (cell: Cell, left: Digits): Deduction => {
    const because = gathering();
    gatherWhyNone(because, now(), board, cell, without(board.domains[cell]!, left));
    return placing("only-digit", 1, cell, min(left), because.reasons);
  };
  const noticed = (cell: Cell, step: Deduction, end: number): void => {
    steps.unshift(step);
    for (const [other, digits] of step.because.facts)
      if (other === cell) wantGone(cell, without(board.domains[cell]!, digits), end);
      else want(other, digits, end);
  };

  const backTo = (begin: number, end: number): void => {
    for (let k = end - 1; k >= begin; k--) possible[cells[k]!] = were[k] as Digits;
  };
  const startingFrom = (): boolean => {
    if (ending) {
      for (const step of ending) steps.push(spelledOut(step, cells.length));
      for (const step of steps) for (const [cell, digits] of step.because.facts) want(cell, digits, cells.length);
      return true;
    }
    const { source, begin } = machine.clash!;
    const empty = cells.at(-1)!;
    backTo(begin, cells.length);
    const from = seenFrom(source);
    const clash =
      from === undefined
        ? watchers[source]!.clash(now(), board)
        : contradicting(
            gathering()
              .fact(from, possible[from]!)
              .fact(empty, possible[empty]!)
              .link(linksBetween(board, empty, from)[0]!).reasons,
          );
    const proved = small(clash, begin);
    if (proved) take(proved, begin);
    return proved !== undefined;
  };

  /** Tells what is needed of a doing; false where that can't be proved, nor that its reasons clash. */
  const toldAgain = ({ removes, places }: Needed, source: number, begin: number, end: number): boolean => {
    const watcher = watchers[source];
    const refutation = source === refuted ? refutations.get(begin) : undefined;
    for (const [cell, left] of places) {
      if (watcher?.placing) {
        removes.delete(cell);
        continue;
      }
      const plain = noticing(cell, left);
      const step = small(plain, end);
      if (!step) return restarted(plain, begin);
      noticed(cell, step, end);
    }
    if (refutation && removes.size > 0) take(leaner(board, spelledOut(refutation, begin), possible), begin);
    const said = [
      ...(watcher && removes.size > 0 ? watcher.steps(removes, now(), board) : []),
      ...(watcher?.placing ? [...places].map(([cell, left]) => watcher.placing!(cell, min(left), now(), board)) : []),
    ];
    for (const deduction of said) {
      const proved = small(deduction, begin);
      if (!proved) return restarted(deduction, begin);
      take(proved, begin);
    }
    return true;
  };

  let end = ending ? cells.length : machine.clash!.begin;
  if (!startingFrom()) return { source: machine.clash!.source };
  while (end > base) {
    const begin = begins[end - 1]!;
    const source = sources[begin]!;
    backTo(begin, end);
    const use = needed.get(begin);
    if (use && source === onTrial) usesTrial = true;
    else if (use) {
      yield;
      if (!toldAgain(use, source, begin, end)) return { source };
    }
    end = begin;
  }
  return { steps, usesTrial };
}
