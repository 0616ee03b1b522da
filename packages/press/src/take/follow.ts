import type { Plan, Take } from "@solvewright/engine";
import { timesOf } from "../deliverables/times.ts";
import { settledIn } from "./settled.ts";

/** A planned time and when it came in a take, both in seconds. */
interface Anchor {
  readonly planned: number;
  readonly taken: number;
}

/** The planned end of each beat, and when each of its digits was entered; an act is over when the last of its own is. */
const anchorsOf = (plan: Plan, take: Take, solution: Readonly<Record<string, number>>): Anchor[] => {
  const settled = settledIn(take, solution);
  const { starts } = timesOf(plan);
  const placesOf = new Map(plan.steps.map(({ n, places }) => [n, Object.keys(places)]));
  return plan.acts.flatMap(({ beats }) => {
    const anchors = beats.flatMap(({ n, seconds, steps }) =>
      steps
        .flatMap((step) => placesOf.get(step) ?? [])
        .flatMap((cell) => settled.get(cell) ?? [])
        .map((taken) => ({ planned: starts.get(n)! + seconds, taken })),
    );
    const over = {
      planned: Math.max(...anchors.map(({ planned }) => planned)),
      taken: Math.max(...anchors.map(({ taken }) => taken)),
    };
    return anchors.length > 0 ? [...anchors, over] : [];
  });
};

/** The most anchors that agree on the order: what was done early, late or anew is left aside. */
const agreeing = (anchors: readonly Anchor[]): Anchor[] => {
  const sorted = [...anchors].sort((a, b) => a.planned - b.planned || a.taken - b.taken);
  const best: { readonly length: number; readonly before: number }[] = [];
  for (const [k, { taken }] of sorted.entries()) {
    let [length, before] = [1, -1];
    for (let j = 0; j < k; j++)
      if (sorted[j]!.taken <= taken && best[j]!.length + 1 > length) [length, before] = [best[j]!.length + 1, j];
    best.push({ length, before });
  }
  const kept: Anchor[] = [];
  const longest = Math.max(0, ...best.map(({ length }) => length));
  for (let k = best.findIndex(({ length }) => length === longest); k >= 0; k = best[k]!.before)
    kept.unshift(sorted[k]!);
  return kept;
};

/**
 * When what was planned for a time came in a take. A beat is over when its last digit is in; between beats time runs
 * evenly; the slate is the show's start, and the end of the take its end.
 */
export const following = (
  plan: Plan,
  take: Take,
  solution: Readonly<Record<string, number>>,
): ((planned: number) => number) => {
  const within = anchorsOf(plan, take, solution).filter(({ taken }) => taken >= take.slate && taken <= take.ends);
  const anchors = [{ planned: 0, taken: take.slate }, ...agreeing(within), { planned: plan.seconds, taken: take.ends }];
  return (planned) => {
    const k = anchors.findIndex((anchor, index) => index > 0 && planned <= anchor.planned);
    if (k < 0) return take.ends;
    // Of the anchors at one time the last: a beat is over when all its digits are in.
    let [before, after] = [anchors[k - 1]!, anchors[k]!];
    for (let j = k; anchors[j]?.planned === planned; j++) [before, after] = [anchors[j]!, anchors[j]!];
    const share = after.planned === before.planned ? 1 : (planned - before.planned) / (after.planned - before.planned);
    return before.taken + share * (after.taken - before.taken);
  };
};
