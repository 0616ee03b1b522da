import type { Flag } from "./command.ts";

/** How a show was recorded, cut and published. */
export const takeFlags: readonly Flag[] = [
  { name: "--take <file>", text: "a recorded solve: times are those of the take" },
  { name: "--edit <file>", text: "what was cut: our own form, OpenTimelineIO or a CMX 3600 list" },
  { name: "--offset <seconds>", text: "when the slate flashes in the recording, where the edit does not say" },
  { name: "--watch <address>", text: "where it can be watched, with {seconds} for the time" },
];
