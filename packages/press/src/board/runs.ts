import type { Point } from "@solvewright/engine";
import type { Segment } from "./segments.ts";

const isUpright = ([from, to]: Segment): boolean => from[0] === to[0];

const joinedAlong = (segments: readonly Segment[], along: 0 | 1): Segment[] => {
  const across = along === 0 ? 1 : 0;
  const runs: Segment[] = [];
  for (const [from, to] of [...segments].sort((a, b) => a[0][across] - b[0][across] || a[0][along] - b[0][along])) {
    const last = runs.at(-1);
    if (last && last[1][0] === from[0] && last[1][1] === from[1]) runs.splice(-1, 1, [last[0], to]);
    else runs.push([from, to]);
  }
  return runs;
};

/** Pieces of level and upright lines, each leading right or down, joined where one begins at the other's end. */
export const joined = (segments: readonly Segment[]): Segment[] => [
  ...joinedAlong(
    segments.filter((segment) => !isUpright(segment)),
    0,
  ),
  ...joinedAlong(segments.filter(isUpright), 1),
];

/** Steps round a closed way cut into its longest runs of one sort, the first of a run joined to the last round the end. */
export const runsRound = <T, S>(
  steps: readonly T[],
  sortOf: (step: T) => S,
): { sort: S; steps: T[]; whole: boolean }[] => {
  const start = steps.findIndex((step, k) => sortOf(step) !== sortOf(steps.at(k - 1)!));
  if (start < 0) return steps.length === 0 ? [] : [{ sort: sortOf(steps[0]!), steps: [...steps], whole: true }];
  const runs: { sort: S; steps: T[]; whole: boolean }[] = [];
  for (const step of [...steps.slice(start), ...steps.slice(0, start)]) {
    const last = runs.at(-1);
    if (last && last.sort === sortOf(step)) last.steps.push(step);
    else runs.push({ sort: sortOf(step), steps: [step], whole: false });
  }
  return runs;
};

/** The corners of steps that follow each other, straight ones left out. */
export const cornersOf = (steps: readonly Segment[], whole: boolean): Point[] => {
  const points = [...steps.map(([from]) => from), ...(whole ? [] : [steps.at(-1)![1]])];
  const straight = (k: number): boolean => {
    const [before, here, after] = [points.at(k - 1)!, points[k]!, points[(k + 1) % points.length]!];
    return (before[0] === here[0] && here[0] === after[0]) || (before[1] === here[1] && here[1] === after[1]);
  };
  return points.filter((_, k) => (!whole && (k === 0 || k === points.length - 1)) || !straight(k));
};

const toTheRight = (from: Point | undefined, to: Point | undefined, by: number): Point =>
  from && to ? [-Math.sign(to[1] - from[1]) * by, Math.sign(to[0] - from[0]) * by] : [0, 0];

/** A way of level and upright lines moved to its right by that much, its corners kept square. */
export const moved = (points: readonly Point[], by: number, whole: boolean): Point[] =>
  points.map((point, k) => {
    const before = whole ? points.at(k - 1) : points[k - 1];
    const after = whole ? points[(k + 1) % points.length] : points[k + 1];
    const [first, second] = [toTheRight(before, point, by), toTheRight(point, after, by)];
    return [point[0] + first[0] + second[0], point[1] + first[1] + second[1]];
  });
