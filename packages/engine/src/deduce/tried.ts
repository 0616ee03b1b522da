import type { Board } from "../board/board.ts";
import { both, type Digits, isEmpty, isOne, isWithin, only, without } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction, Reasons } from "./deduction.ts";
import { apartIn } from "./left-by-reasons.ts";
import { gathering } from "./reasons.ts";
import { dropFact, dropName } from "./shrink.ts";

/** What is known on the way through a trial, by what it lists from outside alone. */
const knownFrom = (board: Board, because: Reasons, [tried, digit]: readonly [Cell, number]) => {
  const apart = apartIn(because, board);
  const known = [...board.domains];
  const settle = (cell: Cell, digits: Digits): void => {
    known[cell] = both(known[cell]!, digits);
    for (const cells of apart)
      if (cells.includes(cell))
        for (const other of cells) if (other !== cell) known[other] = without(known[other]!, digits);
  };
  for (const [cell, digits] of because.facts) known[cell] = both(known[cell]!, digits);
  for (const [cell, digits] of because.facts) if (isOne(digits)) settle(cell, digits);
  settle(tried, only(digit));
  const learn = ({ places, removes }: Deduction): void => {
    for (const [cell, placed] of places) settle(cell, only(placed));
    for (const [cell, digits] of removes) known[cell] = without(known[cell]!, digits);
  };
  return { known, learn };
};

/** What a trial is told with: where, what is tried in which cell, and what is possible outside it. */
interface Tried {
  readonly board: Board;
  readonly trial: readonly [Cell, number];
  /** By `Cell`, as bits. */
  readonly outside: ArrayLike<number>;
}

/** Whether each sub-step finds what it leans on, in what is listed outside or in those before it. */
const isFounded = (because: Reasons, { board, trial }: Tried, steps: readonly Deduction[]): boolean => {
  const { known, learn } = knownFrom(board, because, trial);
  return steps.every((step) => {
    const fine = [...step.because.facts].every(([cell, digits]) => isWithin(known[cell]!, digits));
    learn(step);
    return fine;
  });
};

/** The houses and rules of all sub-steps, and of their facts what neither the trial nor an earlier one gives. */
const outsideReasons = ({ board, trial, outside }: Tried, steps: readonly Deduction[]): Reasons => {
  const because = gathering();
  for (const step of steps) {
    for (const id of step.because.houses) because.house(id);
    for (const id of step.because.rules) because.rule(id);
  }
  const { known, learn } = knownFrom(board, because.reasons, trial);
  for (const step of steps) {
    for (const [cell, digits] of step.because.facts) {
      const gone = without(without(known[cell]!, digits), outside[cell]! as Digits);
      if (!isEmpty(gone))
        because.fact(cell, isOne(digits) && outside[cell] === digits ? digits : without(board.domains[cell]!, gone));
    }
    learn(step);
  }
  return because.reasons;
};

/** Without the facts that the sub-steps find anyway, and without the houses and rules that nothing is seen through. */
const fewest = (because: Reasons, tried: Tried, steps: readonly Deduction[]): Reasons => {
  const { houses, rules } = outsideReasons(tried, steps);
  let kept = because;
  const tryTo = (fewer: Reasons): void => {
    if (isFounded(fewer, tried, steps)) kept = fewer;
  };
  for (const id of because.houses) if (!houses.includes(id)) tryTo(dropName("houses", id)(kept));
  for (const id of because.rules) if (!rules.includes(id)) tryTo(dropName("rules", id)(kept));
  for (const cell of because.facts.keys()) tryTo(dropFact(cell)(kept));
  return kept;
};

/** Whether a later one leans on a cell as settled that this one places, were it by sight alone the only digit left. */
const isSettledFor = (later: readonly Deduction[], { places }: Deduction): boolean =>
  later.some(({ because }) => [...places].some(([cell, digit]) => because.facts.get(cell) === only(digit)));

/** The sub-steps without those that nothing after them leans on, the last ones first. */
const fewestSteps = (because: Reasons, tried: Tried, steps: readonly Deduction[]): readonly Deduction[] => {
  let kept = steps;
  for (let k = steps.length - 2; k >= 0; k--) {
    if (isSettledFor(kept.slice(k + 1), kept[k]!)) continue;
    const fewer = kept.toSpliced(k, 1);
    if (isFounded(because, tried, fewer)) kept = fewer;
  }
  return kept;
};

const shortSteps = 3;

/** A digit that fails in a cell, by sub-steps of which the last is the contradiction; it lists what they lean on from outside. */
export const triedStep = (tried: Tried, all: readonly Deduction[]): Deduction => {
  const because = outsideReasons(tried, all);
  const steps = fewestSteps(because, tried, all);
  const isShort = steps.length <= shortSteps && steps.every(({ level }) => level <= 2);
  return {
    technique: isShort ? "what-if" : "long-what-if",
    level: isShort ? 4 : 5,
    places: new Map(),
    removes: new Map([[tried.trial[0], only(tried.trial[1])]]),
    spots: [],
    relates: [],
    because: fewest(because, tried, steps),
    assume: tried.trial,
    steps,
  };
};

/** The same step where its reasons have been put in other words. */
export const leaner = (board: Board, step: Deduction, outside: ArrayLike<number>): Deduction => {
  const tried = { board, trial: step.assume!, outside };
  const steps = fewestSteps(step.because, tried, step.steps!);
  return { ...step, steps, because: fewest(step.because, tried, steps) };
};
