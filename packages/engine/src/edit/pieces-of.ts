import type { Spot, Tell } from "../puzzle/tree.ts";
import type { Edit } from "./edit.ts";

/** A stretch of some recording on an editor's timeline, in seconds; `at` is where on the timeline. */
export interface Placed {
  readonly media: string;
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly spot: Spot;
}

/** What of a timeline concerns a take: how its recording is carried over to the video, and where in it the slate flashes. */
export interface Cutting {
  readonly edit: Edit;
  /** In seconds of the recording. */
  readonly slate?: number;
}

/** The recording of which most is shown. */
const mainOf = (placed: readonly Placed[]): string | undefined => {
  const shown = new Map<string, number>();
  for (const { media, from, to } of placed) shown.set(media, (shown.get(media) ?? 0) + to - from);
  return [...shown].sort((a, b) => b[1] - a[1])[0]?.[0];
};

const slack = 1e-6;

/**
 * How the recording of which most is shown is carried over; what else is on the timeline only takes its time. Told where
 * it is shown twice, or in another order than it was recorded.
 */
export const piecesOf = (placed: readonly Placed[], tell: Tell): Edit => {
  const main = mainOf(placed);
  const pieces = placed.filter(({ media, from, to }) => media === main && to > from).sort((a, b) => a.at - b.at);
  pieces.forEach(({ from, spot }, k) => {
    if (k > 0 && from < pieces[k - 1]!.to - slack)
      tell(
        spot,
        "a piece from before the end of the one that it follows",
        "pieces in the order in which they were recorded, none twice",
      );
  });
  return pieces.map(({ from, to, at }) => ({ from, to, shift: at - from }));
};

/** When the recording shows what the video shows then; undefined where the video shows something else. */
export const backThrough = (edit: Edit, time: number): number | undefined => {
  const piece = edit.find(({ from, to, shift }) => from + shift <= time && time < to + shift);
  return piece && time - piece.shift;
};
