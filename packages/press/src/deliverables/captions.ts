import { showTimes } from "../take/show-times.ts";
import { hasSaid, saidIn } from "../transcript/said.ts";
import { cuesOf } from "./cues.ts";
import type { Deliverable, Show } from "./show.ts";
import { type Cue, writeSrt, writeVtt } from "./vtt.ts";

/** WebVTT shows no notes, and SRT knows none, so that the first caption says it as well. */
const first = { text: "[Draft from the script]", from: 0, to: 1.2 };

const draftCues = (show: Show): Cue[] => cuesOf([first, ...showTimes(show).lines]);
const saidCues = ({ recorded = {} }: Show): Cue[] => cuesOf(saidIn(recorded).lines);

/** Captions of what was said, from a transcript. */
export const captionsVtt: Deliverable = {
  name: "captions.vtt",
  purpose: "Captions of what was said, from the transcript.",
  needs: ["consent"],
  isFor: hasSaid,
  make: (show) => writeVtt(saidCues(show)),
};

export const captionsSrt: Deliverable = {
  name: "captions.srt",
  purpose: "The same captions as SRT, for players that take no WebVTT.",
  needs: ["consent"],
  isFor: hasSaid,
  make: (show) => writeSrt(saidCues(show)),
};

const hasNotSaid = (show: Show): boolean => !hasSaid(show);

/** Captions of what was to be said, where nobody has told what was. */
export const draftVtt: Deliverable = {
  name: "captions-draft.vtt",
  purpose: "Draft captions made from the script, to be replaced by what was said.",
  needs: ["consent"],
  isFor: hasNotSaid,
  make: (show) => writeVtt(draftCues(show), "A draft made from the script: not what was said."),
};

export const draftSrt: Deliverable = {
  name: "captions-draft.srt",
  purpose: "The same draft as SRT, for players that take no WebVTT.",
  needs: ["consent"],
  isFor: hasNotSaid,
  make: (show) => writeSrt(draftCues(show)),
};
