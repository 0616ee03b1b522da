import { showTimes } from "../take/show-times.ts";
import type { Deliverable } from "./show.ts";
import { oneLine } from "./texts.ts";
import { writeVtt } from "./vtt.ts";

/** Chapters as WebVTT (W3C): one cue an act; times in seconds of the video: as planned, or from the take through the edit. */
export const chapters: Deliverable = {
  name: "chapters.vtt",
  purpose: "Chapters: at the planned times, or with a take where they are in the video.",
  needs: ["consent"],
  make: (show) => writeVtt(showTimes(show).chapters.map(({ title, from, to }) => ({ from, to, text: oneLine(title) }))),
};
