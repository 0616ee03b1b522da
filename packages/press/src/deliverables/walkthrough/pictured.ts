import type { StagedBeat } from "../standing.ts";

/** At most so many beats pass without a picture. */
const most = 4;

/** The beats that are shown in a picture: the first of every act, those worth a pause, and one every few between. */
export const picturedBeats = (beats: readonly StagedBeat[]): ReadonlySet<number> => {
  const chosen = new Set<number>();
  let [act, since] = [-1, 0];
  for (const { beat, act: here } of beats) {
    since++;
    if (here === act && !beat.pause && since < most) continue;
    chosen.add(beat.n);
    [act, since] = [here, 0];
  }
  return chosen;
};
