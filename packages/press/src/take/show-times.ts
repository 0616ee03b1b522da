import { type Edit, endOf, through } from "@solvewright/engine";
import type { Show } from "../deliverables/show.ts";
import { longEnough, type Spoken, type Stretch, type Timed, timesOf } from "../deliverables/times.ts";
import { following } from "./follow.ts";
import { takeToVideo } from "./recorded.ts";
import { settledIn } from "./settled.ts";

/** What lay in a cut: what it is, and when in the take it was. */
export interface Cut {
  readonly what: string;
  /** Seconds of the take. */
  readonly at: number;
  /** Seconds of the video to which it was moved; left out where it was dropped. */
  readonly to?: number;
}

/** When everything is in the published video, in seconds from its start. */
export interface ShowTimes extends Timed {
  /** When each cell was settled, by its name; where there is a take. */
  readonly moments?: ReadonlyMap<string, number>;
  readonly cut: readonly Cut[];
}

/** A stretch of time less what is cut from it; undefined where less than half of it is left. */
const leftOf = <Part extends { readonly from: number; readonly to: number }>(
  part: Part,
  edit: Edit,
): Part | undefined => {
  const [from, to] = [through(edit, part.from).at, through(edit, part.to).at];
  return to - from >= (part.to - part.from) / 2 - 1e-9 && to > from ? { ...part, from, to } : undefined;
};

/** Lines as they are said in the take, without those that are mostly cut. */
const linesIn = (lines: readonly Spoken[], edit: Edit, cut: Cut[]): Spoken[] =>
  lines.flatMap((line) => {
    const left = leftOf(line, edit);
    if (!left) cut.push({ what: `the line "${line.text}"`, at: line.from });
    return left ?? [];
  });

const carriedOver =
  (edit: Edit, cut: Cut[]) =>
  (what: string, taken: number): number => {
    const { at, cut: isCut } = through(edit, taken);
    if (isCut) cut.push({ what, at: taken, to: at });
    return at;
  };

/** The acts in the video: the first from its very start, the last to its end. */
const actsIn = (acts: readonly Stretch[], carry: (what: string, at: number) => number, ends: number): Stretch[] => {
  const starts = acts.map(({ title, from }, k) => (k === 0 ? 0 : carry(`the start of "${title}"`, from)));
  return acts.map((act, k) => ({ ...act, from: starts[k]!, to: starts[k + 1] ?? ends }));
};

/** When everything of a show happens in its video: as planned, or where there is a take as it was done, through the edit. */
export const showTimes = (show: Show): ShowTimes => {
  const { plan, recorded, solution } = show;
  const planned = timesOf(plan);
  if (!recorded?.take) return { ...planned, cut: [] };
  const { take } = recorded;
  const edit = takeToVideo(recorded, take);
  const follow = following(plan, take, solution);
  const taken = <Part extends { readonly from: number; readonly to: number }>(part: Part): Part => ({
    ...part,
    from: follow(part.from),
    to: follow(part.to),
  });
  const cut: Cut[] = [];
  const carry = carriedOver(edit, cut);
  const end = Number.isFinite(endOf(edit)) ? endOf(edit) : through(edit, take.ends).at;
  const acts = actsIn(planned.acts.map(taken), carry, end);
  const starts = new Map([...planned.starts].map(([n, at]) => [n, through(edit, follow(at)).at] as const));
  const moments = new Map([...settledIn(take, solution)].map(([cell, at]) => [cell, carry(cell, at)] as const));
  const lines = linesIn(planned.lines.map(taken), edit, cut);
  return { acts, chapters: longEnough(acts, [...starts.values()]), lines, starts, moments, cut };
};
