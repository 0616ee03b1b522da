import type { Problem } from "@solvewright/engine";
import type { SpokenWord } from "../take/recorded.ts";

/** What was said: words with their times, or a text without times. */
export type Transcript = { readonly words: readonly SpokenWord[] } | { readonly text: string };

const stamp = "(?:(\\d{1,4}):)?([0-5]\\d):([0-5]\\d)[.,](\\d{3})";
const timing = new RegExp(`^\\s*${stamp}[ \\t]+-->[ \\t]+${stamp}(?:\\s.*)?$`);

const secondsOf = ([hours, minutes, seconds, thousandths]: readonly (string | undefined)[]): number =>
  Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(thousandths) / 1000;

const signs: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", nbsp: " ", lrm: "", rlm: "" };

/** A cue's text without its markup. */
const plainText = (text: string): string =>
  text
    .replace(/<\/?(?:c|i|b|u|v|lang|ruby|rt|font)\b[^>]*>|<[\d:.]+>|\{\\an\d\}/gi, "")
    .replace(/&(amp|lt|gt|nbsp|lrm|rlm);/g, (_, name: string) => signs[name]!);

/** The words of a text, each with its share of the time by its length. */
export const spread = (text: string, from: number, to: number): SpokenWord[] => {
  const words = text.split(/\s+/).filter((word) => word !== "");
  const all = words.reduce((sum, word) => sum + word.length + 1, 0);
  let at = from;
  return words.map((word) => {
    const start = at;
    at += ((to - from) * (word.length + 1)) / all;
    return { text: word, from: start, to: at };
  });
};

const fault = (line: number, read: string, right: string): Problem => ({
  line,
  column: 1,
  read: read.trim().slice(0, 60),
  right,
  path: `${line}`,
});

interface Read {
  readonly transcript?: Transcript;
  readonly problems: readonly Problem[];
}

const timedWords = (lines: readonly string[]): Read => {
  const problems: Problem[] = [];
  const words: SpokenWord[] = [];
  for (const [k, line] of lines.entries()) {
    if (!line.includes("-->")) continue;
    const found = timing.exec(line);
    if (!found) {
      problems.push(fault(k + 1, line, "a cue's times, such as 00:01:02.500 --> 00:01:04.000"));
      continue;
    }
    const [from, to] = [secondsOf(found.slice(1, 5)), secondsOf(found.slice(5, 9))];
    if (to <= from) problems.push(fault(k + 1, line, "a cue that ends after it begins"));
    if (from < (words.at(-1)?.from ?? 0)) problems.push(fault(k + 1, line, "cues in the order of time"));
    const rest = lines.slice(k + 1);
    const end = rest.findIndex((text) => text.trim() === "" || text.includes("-->"));
    words.push(...spread(plainText(rest.slice(0, end < 0 ? rest.length : end).join(" ")), from, to));
  }
  if (words.length === 0 && problems.length === 0) problems.push(fault(1, lines[0] ?? "", "a cue with words"));
  return problems.length > 0 ? { problems } : { transcript: { words }, problems };
};

/** Reads a transcript: WebVTT, SRT, or plain text where no cue's times stand in it. Never throws. */
export const readTranscript = (text: string): Read => {
  const source = text.replace(/^\ufeff/, "");
  const lines = source.split(/\r\n|\n|\r/);
  if (/^WEBVTT(\s|$)/.test(source) || lines.some((line) => /\d[.,]\d{3}\s*-->/.test(line))) return timedWords(lines);
  if (source.trim() === "") return { problems: [fault(1, "an empty file", "what was said")] };
  return { transcript: { text: source }, problems: [] };
};
