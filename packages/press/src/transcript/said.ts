import { through } from "@solvewright/engine";
import type { Spoken } from "../deliverables/times.ts";
import { type Recorded, recordingToVideo, type SpokenWord, takeToRecording } from "../take/recorded.ts";
import { spread } from "./read-transcript.ts";

/** A silence of so many seconds ends a caption, and so do so many words without a full stop. */
const silence = 1.5;
const mostWords = 40;

/** Words in the sentences in which they were said. */
const inSentences = (words: readonly SpokenWord[]): Spoken[] => {
  const found: Spoken[] = [];
  let count = 0;
  let isOver = true;
  for (const { text, from, to } of words) {
    const last = found.at(-1);
    if (!last || isOver || count >= mostWords || from - last.to > silence) {
      found.push({ text, from, to });
      count = 0;
    } else found[found.length - 1] = { text: `${last.text} ${text}`, from: last.from, to: Math.max(last.to, to) };
    count++;
    isOver = /[.!?…]["'”’)]?$/.test(text);
  }
  return found;
};

/** The words of a transcript in the recording's time: a text without times is spread evenly over the take. */
const wordsIn = (recorded: Recorded): readonly SpokenWord[] => {
  const { transcript, take } = recorded;
  if (!transcript) return [];
  if ("words" in transcript) return transcript.words;
  if (!take) return [];
  const ahead = takeToRecording(recorded, take);
  return spread(transcript.text, take.slate + ahead, take.ends + ahead);
};

export interface Said {
  /** In seconds of the video. */
  readonly lines: readonly Spoken[];
  /** What was cut, in seconds of the recording. */
  readonly cut: readonly Spoken[];
}

/** What was said, in the video: words that lie in a cut are left out. */
export const saidIn = (recorded: Recorded): Said => {
  const edit = recordingToVideo(recorded);
  const words = wordsIn(recorded);
  const isCut = ({ from, to }: SpokenWord): boolean => through(edit, (from + to) / 2).cut;
  const kept = words
    .filter((word) => !isCut(word))
    .map(({ text, from, to }) => ({ text, from: through(edit, from).at, to: through(edit, to).at }));
  return { lines: inSentences(kept), cut: inSentences(words.filter(isCut)) };
};

/** Whether the times of what was said are known, or can be told from the take. */
export const hasSaid = ({ recorded }: { readonly recorded?: Recorded }): boolean =>
  recorded?.transcript !== undefined && ("words" in recorded.transcript || recorded.take !== undefined);
