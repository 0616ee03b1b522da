import type { Fault } from "./contract.ts";

/** A number that some cells reach, and how they are called. */
interface Side {
  readonly called: string;
  readonly values: readonly number[];
}

const least = ({ values }: Side): number => values.reduce((a, b) => Math.min(a, b));
const most = ({ values }: Side): number => values.reduce((a, b) => Math.max(a, b));

/** Why two sides can't come to the same number; undefined where they can. */
export const imbalance = (first: Side, second: Side): Pick<Fault, "right"> | undefined => {
  const common = new Set(second.values);
  if (first.values.some((value) => common.has(value))) return undefined;
  const [low, high] = most(first) < least(second) ? [first, second] : [second, first];
  if (most(low) >= least(high)) return { right: `cells in which ${first.called} can equal ${second.called}` };
  return {
    right: `cells in which ${low.called} can reach ${high.called}: ${most(low)} at most against ${least(high)} at least`,
  };
};
