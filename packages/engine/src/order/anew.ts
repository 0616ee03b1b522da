import type { Board } from "../board/board.ts";
import { either, isOne, listOf, only, without } from "../board/digits.ts";
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

/** By itself, its reasons made small in this state; undefined where they don't hold. */
export const alone = (step: Deduction, knowledge: Knowledge, board: Board, judge: Judge): Deduction | undefined => {
  const trail = trailOf();
  trail.add(step, knowledge);
  return traced(trail, knowledge, board, judge)?.at(-1);
};

/** With every digit that its reasons take out of its cells: where the step was found, some may have been gone already. */
const inFull = (step: Deduction, knowledge: Knowledge, judge: Judge): Deduction => {
  let whole = step;
  for (const [cell, gone] of step.removes)
    for (const digit of listOf(without(at(knowledge, cell), gone))) {
      const more = either(whole.removes.get(cell)!, only(digit));
      const wider = { ...whole, removes: new Map([...whole.removes, [cell, more]]) };
      if (judge.holds(wider)) whole = wider;
    }
  return whole;
};

/**
 * A burst on the board as it now stands: what is no longer new falls away, what is not `small` as it is (made small and
 * proved, with the same removals) is made small again, and a reason takes out all that it does here. Undefined where
 * something can't be proved.
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
    const whole = small.assume ? small : inFull(small, end, judge);
    kept.push(whole);
    end = after(end, board, whole);
  }
  return { kept, end };
};
