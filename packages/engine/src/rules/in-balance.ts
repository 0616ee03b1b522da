import type { Fault } from "./contract.ts";

/** A number that some cells reach, and how they are called. */
interface Side {
  readonly called: string;
  readonly values: readonly number[];
}

const least = ({ values }: Side): number => values.reduce((a, b) => Math.min(a, b));
const most = ({ values }: Side): number => values.reduce((a, b) => Math.max(a, b));

/** Whether there is a number that is in every list. */
export const haveCommon = (lists: readonly (readonly number[])[]): boolean => {
  const [first, ...others] = [...lists].sort((a, b) => b.length - a.length);
  const sets = others.map((values) => new Set(values));
  return first!.some((value) => sets.every((set) => set.has(value)));
};

/** Why two sides can't come to the same number; undefined where they can. */
export const imbalance = (first: Side, second: Side): Pick<Fault, "right"> | undefined => {
  if (haveCommon([first.values, second.values])) return undefined;
  const [low, high] = most(first) < least(second) ? [first, second] : [second, first];
  if (most(low) >= least(high)) return { right: `cells in which ${first.called} can equal ${second.called}` };
  return {
    right: `cells in which ${low.called} can reach ${high.called}: ${most(low)} at most against ${least(high)} at least`,
  };
};
