import type { Board } from "../board/board.ts";
import { has, listOf, only, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { type Burst, withFreshRemoves } from "../deduce/chain.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { travel } from "../deduce/effort.ts";
import type { Judge } from "../deduce/judge.ts";
import { shrink } from "../deduce/shrink.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** Who settled each cell and who took out each digit, by the index of the burst. */
interface Suppliers {
  readonly placed: Map<Cell, number>;
  readonly removed: Map<number, number>;
}

const key = (cell: Cell, digit: number): number => cell * 32 + digit;

/** The burst that makes a digit's absence known: whoever removed it, else the first whose settled digit bars it. */
const supplierOf = (
  cell: Cell,
  digit: number,
  { placed, removed }: Suppliers,
  knowledge: Knowledge,
  board: Board,
): number | undefined => {
  const remover = removed.get(key(cell, digit));
  if (remover !== undefined) return remover;
  const bars = board.sees[cell]!.filter((other) => isSettled(knowledge, other) && at(knowledge, other) === only(digit));
  if (bars.some((other) => !placed.has(other))) return undefined;
  return bars.length > 0 ? Math.min(...bars.map((other) => placed.get(other)!)) : undefined;
};

const neededBy = (step: Deduction, suppliers: Suppliers, knowledge: Knowledge, board: Board): number[] => {
  const needs: (number | undefined)[] = [];
  for (const [cell, digits] of step.because.facts) {
    if (isSettled(knowledge, cell)) needs.push(suppliers.placed.get(cell));
    else
      for (const digit of listOf(without(board.domains[cell]!, digits)))
        needs.push(supplierOf(cell, digit, suppliers, knowledge, board));
  }
  for (const sub of step.steps ?? []) needs.push(...neededBy(sub, suppliers, knowledge, board));
  return needs.filter((need) => need !== undefined);
};

/** By burst, the bursts that must come before it. */
const needsOf = (bursts: readonly Burst[], board: Board): ReadonlySet<number>[] => {
  const suppliers: Suppliers = { placed: new Map(), removed: new Map() };
  let knowledge = startOf(board);
  return bursts.map((burst, index) => {
    const needs = new Set<number>();
    for (const step of burst) {
      for (const need of neededBy(step, suppliers, knowledge, board)) needs.add(need);
      for (const [cell, digits] of step.removes)
        for (const digit of listOf(digits))
          if (has(at(knowledge, cell), digit) && !suppliers.removed.has(key(cell, digit)))
            suppliers.removed.set(key(cell, digit), index);
      for (const cell of step.places.keys()) suppliers.placed.set(cell, index);
      knowledge = after(knowledge, board, step);
    }
    needs.delete(index);
    return needs;
  });
};

/** A burst may be taken this many places early for the eye's sake before its turn weighs more. */
const patience = 0.12;

const placesOf = (burst: Burst): Cell[] => burst.flatMap(({ places }) => [...places.keys()]);

const nextOf = (
  waiting: ReadonlySet<number>,
  done: ReadonlySet<number>,
  needs: readonly ReadonlySet<number>[],
  bursts: readonly Burst[],
  eye: readonly Cell[],
  board: Board,
): number => {
  const ready = [...waiting].filter((index) => [...needs[index]!].every((need) => done.has(need)));
  const first = ready[0]!;
  const cost = (index: number): number => travel(board, eye, placesOf(bursts[index]!)) + patience * (index - first);
  return ready.reduce((best, index) => (cost(index) < cost(best) ? index : best));
};

/** Works a burst out anew on the board as it now stands: what is no longer new falls away, the rest is made small again. */
const anew = (
  burst: Burst,
  knowledge: Knowledge,
  board: Board,
  judge: Judge,
): { kept: Deduction[]; end: Knowledge } => {
  const kept: Deduction[] = [];
  let end = knowledge;
  for (const step of burst) {
    const fresh = withFreshRemoves(step, end);
    if (!fresh) continue;
    const changed =
      fresh !== step && !fresh.assume && fresh.removes.size + count(fresh) !== step.removes.size + count(step);
    const small = changed ? (shrink(fresh, board, judge.holds) ?? fresh) : fresh;
    kept.push(small);
    end = after(end, board, small);
  }
  return { kept, end };
};
const count = ({ removes }: Deduction): number =>
  [...removes.values()].reduce((sum, digits) => sum + listOf(digits).length, 0);

/**
 * Moves the bursts, within what each needs, so that the talk stays in one place until it is worked out; each step is
 * worked out anew where it then stands.
 */
export const arranged = (bursts: readonly Burst[], board: Board, judge: Judge): Burst[] => {
  const needs = needsOf(bursts, board);
  const waiting = new Set(bursts.keys());
  const done = new Set<number>();
  const order: Burst[] = [];
  let knowledge = startOf(board);
  let eye: readonly Cell[] = [];
  while (waiting.size > 0) {
    const next = nextOf(waiting, done, needs, bursts, eye, board);
    waiting.delete(next);
    done.add(next);
    const { kept, end } = anew(bursts[next]!, knowledge, board, judge);
    order.push(kept);
    knowledge = end;
    eye = placesOf(kept);
  }
  return order;
};
