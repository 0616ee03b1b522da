import type { Board } from "../board/board.ts";
import { isOne, listOf } from "../board/digits.ts";
import { at, isSettled, type Knowledge } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { type Burst, withFreshRemoves } from "../deduce/chain.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Judge } from "../deduce/judge.ts";
import { traced, trailOf } from "../deduce/trace.ts";

const sizeOf = ({ removes }: Deduction): number =>
  [...removes.values()].reduce((sum, digits) => sum + listOf(digits).length, 0);

/** With the digits that stand by now in place of what was known of their cells before. */
const withWhatStands = (step: Deduction, knowledge: Knowledge): Deduction => {
  const stale = [...step.because.facts].filter(([cell, digits]) => isSettled(knowledge, cell) && !isOne(digits));
  if (stale.length === 0) return step;
  const facts = new Map([...step.because.facts, ...stale.map(([cell]) => [cell, at(knowledge, cell)] as const)]);
  return { ...step, because: { ...step.because, facts } };
};

const alone = (step: Deduction, knowledge: Knowledge, board: Board, judge: Judge): Deduction | undefined => {
  const trail = trailOf();
  trail.add(step, knowledge);
  return traced(trail, knowledge, board, judge)?.at(-1);
};

/**
 * A burst on the board as it now stands: what is no longer new falls away, and what is not `small` as it is (made small
 * and proved, with the same removals) is made small again. Undefined where something can't be proved.
 */
export const anew = (
  burst: Burst,
  knowledge: Knowledge,
  board: Board,
  judge: Judge,
  isSmall: (step: Deduction) => boolean,
): { readonly kept: Burst; readonly end: Knowledge } | undefined => {
  const kept: Deduction[] = [];
  let end = knowledge;
  for (const step of burst) {
    const fresh = withFreshRemoves(step, end);
    if (!fresh) continue;
    const standing = fresh.assume ? fresh : withWhatStands(fresh, end);
    const isAsItWas = fresh.assume || (standing === fresh && sizeOf(fresh) === sizeOf(step) && isSmall(step));
    const small = isAsItWas ? fresh : (alone(standing, end, board, judge) ?? fresh);
    if (!judge.holds(small)) return undefined;
    kept.push(small);
    end = after(end, board, small);
  }
  return { kept, end };
};
