/** A cue of a caption file; times in seconds. */
export interface Cue {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const two = (number: number): string => String(number).padStart(2, "0");

/** hh:mm:ss.ttt, as WebVTT (W3C) has it; SRT has a comma before the thousandths. */
const stamp = (seconds: number, mark: "." | ","): string => {
  const thousandths = Math.round(seconds * 1000);
  const whole = Math.floor(thousandths / 1000);
  return `${two(Math.floor(whole / 3600))}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}${mark}${String(thousandths % 1000).padStart(3, "0")}`;
};

const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };
const escaped = (text: string): string => text.replace(/[&<>]/g, (sign) => escapes[sign]!);

/** WebVTT (W3C): cues in order of time; a note stands before the first. */
export const writeVtt = (cues: readonly Cue[], note?: string): string =>
  `${[
    "WEBVTT",
    ...(note ? [`NOTE ${note}`] : []),
    ...cues.map(({ from, to, text }) => `${stamp(from, ".")} --> ${stamp(to, ".")}\n${escaped(text)}`),
  ].join("\n\n")}\n`;

/** SRT knows no escapes, and its players take `<` for the start of markup. */
const unmarked = (text: string): string => text.replaceAll("<", "‹").replaceAll(">", "›");

/** SRT (common practice): numbered from 1. */
export const writeSrt = (cues: readonly Cue[]): string =>
  cues
    .map(({ from, to, text }, k) => `${k + 1}\n${stamp(from, ",")} --> ${stamp(to, ",")}\n${unmarked(text)}\n`)
    .join("\n");
