import type { Deliverable } from "./show.ts";
import { oneLine } from "./texts.ts";
import { timesOf } from "./times.ts";
import { writeVtt } from "./vtt.ts";

/** Chapters as WebVTT (W3C): one cue an act; times in seconds from the start of the show, as planned. */
export const chapters: Deliverable = {
  name: "chapters.vtt",
  purpose: "Chapters at the planned times, to be moved once the video is cut.",
  needs: ["consent"],
  make: ({ plan }) =>
    writeVtt(timesOf(plan).chapters.map(({ title, from, to }) => ({ from, to, text: oneLine(title) }))),
};
