import { cuesOf } from "./cues.ts";
import type { Deliverable, Show } from "./show.ts";
import { timesOf } from "./times.ts";
import { writeSrt, writeVtt } from "./vtt.ts";

const draft = "A draft from the script, at the planned times: not what was said.";
const cues = ({ plan }: Show) => cuesOf(timesOf(plan).lines);

export const captionsVtt: Deliverable = {
  name: "captions-draft.vtt",
  purpose: "Draft captions from the script (WebVTT), to be replaced by what was said.",
  text: (show) => writeVtt(cues(show), draft),
};

/** SRT knows no notes, so its first caption says what it is. */
export const captionsSrt: Deliverable = {
  name: "captions-draft.srt",
  purpose: "The same draft as SRT.",
  text: ({ plan }) => writeSrt(cuesOf([{ text: "[Draft from the script]", from: 0, to: 1.2 }, ...timesOf(plan).lines])),
};
