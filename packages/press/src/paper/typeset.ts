import { widthOf } from "../scene/letters.ts";
import type { Face } from "../svg/type.ts";
import type { Colour } from "../tokens.ts";

/** How a stretch of text looks; sizes in points. */
export interface Style {
  readonly face: Face;
  readonly weight: number;
  readonly size: number;
  readonly fill: Colour;
}

export interface Run {
  readonly text: string;
  readonly style: Style;
  /** More room before it than a space, in points. */
  readonly before?: number;
  /** Where it leads, in a file that can lead anywhere. */
  readonly link?: string;
}

/** A run on its line; `x` is where it begins. */
export interface Placed extends Run {
  readonly x: number;
}
export type Line = readonly Placed[];

export const runWidth = ({ text, style: { face, weight, size } }: Run): number => widthOf(text, weight, face) * size;

/** The most letters of a word that fit a line: a longer one is cut. */
const cutToFit = (run: Run, width: number): Run[] => {
  if (runWidth(run) <= width) return [run];
  const letters = [...run.text];
  const pieces: string[] = [""];
  for (const letter of letters) {
    const longer = pieces.at(-1)! + letter;
    if (pieces.at(-1) !== "" && runWidth({ ...run, text: longer }) > width) pieces.push(letter);
    else pieces[pieces.length - 1] = longer;
  }
  return pieces.map((text) => ({ ...run, text }));
};

const wordsOf = (run: Run, width: number): Run[] =>
  run.text
    .replaceAll("'", "’")
    .split(/[ \t\r\n]+/)
    .filter((text) => text !== "")
    .flatMap((text, k) => cutToFit({ ...run, text, before: k === 0 ? (run.before ?? 0) : 0 }, width));

/** The words of a line that look the same as one run. */
const joined = (words: readonly Placed[]): Placed[] => {
  const runs: Placed[] = [];
  for (const word of words) {
    const last = runs.at(-1);
    if (last?.style === word.style && last.link === word.link && !word.before)
      runs[runs.length - 1] = { ...last, text: `${last.text} ${word.text}` };
    else runs.push(word);
  }
  return runs;
};

/** Runs set in lines no wider than `width` points, broken between words. */
export const setLines = (runs: readonly Run[], width: number): Line[] => {
  const lines: Placed[][] = [];
  let end = Number.POSITIVE_INFINITY;
  for (const word of runs.flatMap((run) => wordsOf(run, width))) {
    const space = runWidth({ ...word, text: " " }) + (word.before ?? 0);
    const wide = runWidth(word);
    const isNew = end + space + wide > width;
    if (isNew) lines.push([]);
    const x = isNew ? 0 : end + space;
    lines.at(-1)!.push({ ...word, x });
    end = x + wide;
  }
  return lines.map(joined);
};
