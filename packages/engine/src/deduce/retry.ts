import { type Digits, has, isOne } from "../board/digits.ts";
import type { Deduction } from "./deduction.ts";
import { type Retraced, type Retracing, retraced, type Unproved } from "./retrace.ts";
import type { Trial } from "./trials.ts";
import { triedStep } from "./tried.ts";

/**
 * Goes through trials that are known to fail once more, from the mark on at which their state began, and tells them: each
 * as a step of its own unless it fails whatever is on trial around it, where it says all that there is to say.
 */
export function* toldTrials(
  trials: readonly Trial[],
  base: number,
  retracing: Retracing & { readonly refutations: Map<number, Deduction> },
): Generator<void, Retraced | Unproved> {
  const { machine, board, refutations } = retracing;
  for (const { cell, digit, inner } of trials) {
    // More may be seen this time, as units remember ways to meet them.
    if (isOne(machine.now[cell] as Digits) || !has(machine.now[cell]! as Digits, digit)) continue;
    const mark = machine.mark();
    const fine = machine.attempt(cell, digit);
    const found = fine ? yield* toldTrials(inner, mark, retracing) : yield* retraced(mark, retracing);
    machine.undo(mark);
    if ("source" in found) return found;
    if (!found.usesTrial) return yield* retraced(base, retracing, found.steps);
    refutations.set(mark, triedStep({ board, trial: [cell, digit], outside: machine.now }, found.steps));
    if (!machine.refute(cell, digit)) return yield* retraced(base, retracing);
  }
  return { source: undefined };
}
