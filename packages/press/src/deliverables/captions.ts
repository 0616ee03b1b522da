import { cuesOf } from "./cues.ts";
import type { Deliverable } from "./show.ts";
import { timesOf } from "./times.ts";
import { writeSrt, writeVtt } from "./vtt.ts";

/** WebVTT shows no notes, and SRT knows none, so that the first caption says it as well. */
const first = { text: "[Draft from the script]", from: 0, to: 1.2 };

export const captionsVtt: Deliverable = {
  name: "captions-draft.vtt",
  purpose: "Draft captions made from the script, to be replaced by what was said.",
  needs: ["consent"],
  make: ({ plan }) =>
    writeVtt(
      cuesOf([first, ...timesOf(plan).lines]),
      "A draft made from the script, at the planned times: not what was said.",
    ),
};

export const captionsSrt: Deliverable = {
  name: "captions-draft.srt",
  purpose: "The same draft as SRT, for players that take no WebVTT.",
  needs: ["consent"],
  make: ({ plan }) => writeSrt(cuesOf([first, ...timesOf(plan).lines])),
};
