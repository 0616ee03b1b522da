import type { Spoken } from "./times.ts";
import type { Cue } from "./vtt.ts";

/** What a caption may take: common limits of publishers (DCMP's among them). */
const captionLimits = { line: 42, lines: 2, shortest: 1, longest: 7, charactersASecond: 20 };

const most = captionLimits.line * captionLimits.lines;

/** The text in pieces that fit two lines, cut at clause ends where there is one. */
const pieces = (text: string): string[] => {
  const out: string[] = [];
  let rest = text.trim();
  while (rest.length > 0) {
    if (broken(rest) !== undefined) return [...out, rest];
    const room = rest.slice(0, most + 1);
    const clause = Math.max(...[". ", ", ", "; ", ": "].map((end) => room.slice(0, most - 6).lastIndexOf(end) + 1));
    const cut = clause > most / 3 ? clause : room.slice(0, most - 6).lastIndexOf(" ");
    out.push(rest.slice(0, cut).trim());
    rest = rest.slice(cut).trim();
  }
  return out;
};

/** The text in at most two lines of the allowed length, as even as can be; undefined where it does not fit. */
const broken = (text: string): string | undefined => {
  if (text.length <= captionLimits.line) return text;
  const spaces = [...text.matchAll(/ /g)].map(({ index }) => index);
  const fits = spaces.filter((at) => at <= captionLimits.line && text.length - at - 1 <= captionLimits.line);
  const middle = fits.sort((a, b) => Math.abs(a - text.length / 2) - Math.abs(b - text.length / 2))[0];
  return middle === undefined ? undefined : `${text.slice(0, middle)}\n${text.slice(middle + 1)}`;
};

/**
 * Captions for what is said: each piece as long as its share of the line's time, within the limits; none overlaps the
 * next. Where a line is spoken faster than it can be read, its captions run on into the breath that follows.
 */
export const cuesOf = (lines: readonly Spoken[]): Cue[] => {
  const cues: Cue[] = [];
  let free = 0;
  for (const { text, from, to } of lines) {
    const parts = pieces(text);
    const characters = parts.reduce((sum, part) => sum + part.length, 0);
    let at = from;
    for (const part of parts) {
      const share = ((to - from) * part.length) / characters;
      const start = Math.max(at, free);
      const least = Math.max(captionLimits.shortest, part.length / captionLimits.charactersASecond);
      const end = start + Math.min(captionLimits.longest, Math.max(least, at + share - start));
      cues.push({ from: start, to: end, text: broken(part) ?? part });
      free = end;
      at += share;
    }
  }
  return cues;
};
