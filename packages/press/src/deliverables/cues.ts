import type { Spoken } from "./times.ts";
import type { Cue } from "./vtt.ts";

/** What a caption may take: common limits of publishers (common practice). Lengths in characters, times in seconds. */
const captionLimits = { line: 42, lines: 2, shortest: 1, longest: 7, charactersASecond: 20 };

const most = captionLimits.line * captionLimits.lines + 1;

/** Words; one that fills more than a line is cut. */
const wordsOf = (text: string): string[] =>
  text
    .split(/\s+/)
    .filter((word) => word !== "")
    .flatMap((word) => word.match(new RegExp(`.{1,${captionLimits.line}}`, "gsu")) ?? []);

const isNumber = (word: string | undefined): boolean => /^\d+[,.]?$/.test(word ?? "");
/** Words that lead on to the next, so that nothing ends with them. */
const leading = /^(an?|the|this|these|that|those|and|or|of|in|to|on|by|so|not|only|has|have|is|it's)$/i;
const joining = /^(so|and|but|or|which|that|because|then|where)$/i;

const endsSentence = (word: string): boolean => /[.!?]$/.test(word);

/** How much it hurts to break a text between two words: nothing at the end of a sentence, little at that of a clause. */
const breakCost = (word: string, next: string): number => {
  if (endsSentence(word)) return 0;
  if (/[,]$/.test(word) && !(isNumber(word) && isNumber(next))) return 2;
  if (/[;:]$/.test(word)) return 3;
  if (isNumber(word) && (isNumber(next) || joining.test(next))) return 20;
  if (leading.test(word)) return 14;
  return joining.test(next) ? 5 : 9;
};

const lengthOf = (words: readonly string[]): number => words.reduce((sum, word) => sum + word.length + 1, -1);

interface Caption {
  readonly text: string;
  /** How much its own break hurts. */
  readonly cost: number;
}

/** A sentence that ends in the middle of a line is overlooked, and so is the one that begins there. */
const endsInside = (line: readonly string[]): number => 9 * line.slice(0, -1).filter(endsSentence).length;

/** The words in at most two lines of the allowed length, at the best place to break; undefined where they do not fit. */
const inLines = (words: readonly string[]): Caption | undefined => {
  if (lengthOf(words) <= captionLimits.line) return { text: words.join(" "), cost: 0 };
  let best: Caption | undefined;
  for (let cut = 1; cut < words.length; cut++) {
    const [upper, lower] = [words.slice(0, cut), words.slice(cut)];
    const [first, second] = [lengthOf(upper), lengthOf(lower)];
    if (first > captionLimits.line || second > captionLimits.line) continue;
    const sentences = endsInside(upper) + endsInside(lower);
    const cost = breakCost(upper.at(-1)!, lower[0]!) + Math.abs(first - second) / 4 + sentences;
    if (!best || cost < best.cost) best = { cost, text: `${upper.join(" ")}\n${lower.join(" ")}` };
  }
  return best;
};

/** A caption costs a glance by itself; a very short one is gone before it is read. */
const pieceCost = (length: number, seconds: number): number =>
  3 + Math.max(0, 24 - length) / 3 + 8 * Math.max(0, captionLimits.shortest - seconds);

/** A sentence is best read in one caption: to go on in the next costs more than to go on in the next line. */
const goesOn = (word: string, next: string): number => (endsSentence(word) ? 0 : 3 + breakCost(word, next));

interface Cut {
  readonly cost: number;
  /** Where the last piece begins, by word. */
  readonly from: number;
}

/** The text in pieces that each fit a caption, cut where it hurts least; `seconds` is how long it is spoken. */
const pieces = (text: string, seconds: number): string[] => {
  const words = wordsOf(text);
  const whole = lengthOf(words);
  const best: Cut[] = [{ cost: 0, from: 0 }];
  for (let to = 1; to <= words.length; to++) {
    best[to] = { cost: Number.POSITIVE_INFINITY, from: to - 1 };
    for (let from = to - 1; from >= 0; from--) {
      const piece = words.slice(from, to);
      const length = lengthOf(piece);
      if (length > most) break;
      const caption = inLines(piece);
      if (!caption) continue;
      const end = to === words.length ? 0 : goesOn(words[to - 1]!, words[to]!);
      const cost = best[from]!.cost + end + caption.cost / 3 + pieceCost(length, (seconds * length) / whole);
      if (cost < best[to]!.cost) best[to] = { cost, from };
    }
  }
  const found: string[] = [];
  for (let to = words.length; to > 0; to = best[to]!.from)
    found.unshift(inLines(words.slice(best[to]!.from, to))!.text);
  return found;
};

/**
 * Captions for what is said: each piece as long as its share of the line's time, within the limits; none overlaps the
 * next. Where a line is spoken faster than it can be read, its captions run on into the breath that follows.
 */
export const cuesOf = (lines: readonly Spoken[]): Cue[] => {
  const cues: Cue[] = [];
  let free = 0;
  for (const { text, from, to } of lines) {
    const parts = pieces(text, to - from);
    const characters = parts.reduce((sum, part) => sum + part.length, 0);
    let at = from;
    for (const part of parts) {
      const share = ((to - from) * part.length) / characters;
      const start = Math.max(at, free);
      const least = Math.max(captionLimits.shortest, part.length / captionLimits.charactersASecond);
      const end = start + Math.min(captionLimits.longest, Math.max(least, at + share - start));
      cues.push({ from: start, to: end, text: part });
      free = end;
      at += share;
    }
  }
  return cues;
};
