import { type Part, type Style, textOf, wordsIn } from "../line.ts";
import { capital } from "./counts.ts";

/** Joins words and parts into one sentence with a capital and a full stop; empty pieces fall away. */
export const sentence = (...pieces: readonly (string | Part | readonly Part[] | undefined)[]): Part[] => {
  const parts = pieces
    .flatMap((piece): readonly (string | Part)[] =>
      piece === undefined ? [] : Array.isArray(piece) ? (piece as Part[]) : [piece as string | Part],
    )
    .map((piece): Part => (typeof piece === "string" ? { text: piece, role: "plain" } : piece))
    .filter(({ text }) => text !== "");
  const [first, ...rest] = parts;
  if (!first) return [];
  const whole = [{ ...first, text: capital(first.text) }, ...rest];
  const last = whole.at(-1)!;
  return /[.?!:]$/.test(last.text) ? whole : [...whole, { text: ".", role: "plain" }];
};

/** Sentences one after the other. */
export const sentences = (...all: readonly (readonly Part[])[]): Part[] =>
  all
    .filter((parts) => parts.length > 0)
    .flatMap((parts, k) => (k === 0 ? parts : [{ text: " ", role: "plain" } as Part, ...parts]));

const decapital = (text: string): string =>
  /^([A-Z][a-z]|A )/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** No sentence is longer than this many words. */
export const mostWords = 20;
type Pieces = readonly (string | Part)[];

/** Reasons and what follows: one sentence where it is short enough, else cut before the last reason or before "so". */
export const concluded = (reason: Pieces, further: Part | undefined, end: Part): Part[] => {
  const whole = sentence(...reason, ...(further ? [", and ", further] : []), ", so ", end);
  if (wordsIn(textOf(whole)) <= mostWords) return whole;
  return further
    ? sentences(sentence(...reason), sentence(further, ", so ", end))
    : sentences(sentence(...reason), sentence("so ", end));
};

const mostInLine = 40;

/** Sentences that can be said in one breath. */
const isSayable = (parts: readonly Part[]): boolean => {
  const all = textOf(parts).split(/(?<=[.?!])\s+/);
  return all.length <= 3 && all.every((one) => wordsIn(one) <= mostWords) && wordsIn(textOf(parts)) <= mostInLine;
};

/** Sentences that can be followed by a reader: places have long names. */
const isReadable = (parts: readonly Part[]): boolean => {
  const all = textOf(parts).split(/(?<=[.?!])\s+/);
  return all.length <= 3 && all.every((one) => wordsIn(one) <= 2 * mostWords);
};

/** Whether a line is short enough for its style: to be said in one breath, or to be read. */
export const isShortFor = (style: Style): ((parts: readonly Part[]) => boolean) =>
  style === "placed" ? isReadable : isSayable;

/** A reason cut before its last "and". */
const inTwo = (said: string): readonly [string, string?] => {
  const cut = said.lastIndexOf(", and ");
  return cut < 0 ? [said] : [said.slice(0, cut), said.slice(cut + ", and ".length)];
};

/** A reason of one or two clauses with the words before it and what follows, cut where it is long; undefined where that does not help. */
export const explained = (
  style: Style,
  opening: Pieces,
  said: string,
  of: Part["of"],
  end: Part,
  before: readonly Part[] = [],
): Part[] | undefined => {
  const partOf = (text: string): Part => ({ text, role: "because", ...(of ? { of } : {}) });
  const [first, second] = inTwo(said);
  const further = second === undefined ? undefined : partOf(second);
  const ways = [
    concluded([...opening, partOf(said)], undefined, end),
    concluded([...opening, partOf(first)], further, end),
  ];
  return ways.map((way) => sentences(before, way)).find(isShortFor(style));
};

/** A reason that was given before, said again. */
export const recalled = (parts: readonly Part[]): Part[] =>
  parts.map((part, k) => (k === 0 ? { ...part, text: `Remember, ${decapital(part.text)}` } : part));

/** A line with words before it: "Elsewhere, this row just needs a 4." */
export const led = (words: string, parts: readonly Part[]): Part[] => {
  const [first, ...rest] = parts;
  return first ? [{ text: words, role: "plain" }, { ...first, text: decapital(first.text) }, ...rest] : [];
};
