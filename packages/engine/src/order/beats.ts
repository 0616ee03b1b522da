import type { Board } from "../board/board.ts";
import { type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Burst } from "../deduce/chain.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { textOf, wordsIn } from "../speech/line.ts";
import { phrase } from "../speech/phrase.ts";

/** More than this is two beats. */
const mostWords = 40;
const mostSentences = 3;
const mostDigits = 4;

interface Growing {
  readonly steps: Deduction[];
  words: number;
  sentences: number;
}

const isEasy = (burst: readonly Deduction[]): boolean =>
  burst.every(({ level, places }) => level === 1 && places.size === 1);

const shareHouse = (board: Board, a: Deduction, b: Deduction): boolean => {
  const [cell] = [...a.places.keys()];
  const [other] = [...b.places.keys()];
  return board.houses.some(({ cells }) => cells.includes(cell!) && cells.includes(other!));
};

const sentencesIn = (text: string): number => text.match(/[.?!](\s|$)/g)?.length ?? 0;

/**
 * Groups the steps into what is said in one breath: the steps that lead to a digit stay together, easy digits of one
 * house are taken together, and what gets too long is cut in two.
 */
export const beatsOf = (bursts: readonly Burst[], board: Board): (readonly Deduction[])[] => {
  const beats: Growing[] = [];
  let knowledge: Knowledge = startOf(board);
  for (const burst of bursts) {
    const current = beats.at(-1);
    const continues =
      current &&
      isEasy(burst) &&
      isEasy(current.steps) &&
      current.steps.length < mostDigits &&
      shareHouse(board, current.steps.at(-1)!, burst[0]!);
    let beat = continues ? current : undefined;
    for (const step of burst) {
      const text = textOf(phrase(step, knowledge, board, "pointing", beat?.steps.at(-1)));
      const words = wordsIn(text);
      const sentences = sentencesIn(text);
      if (
        !beat ||
        (beat.steps.length > 0 && (beat.words + words > mostWords || beat.sentences + sentences > mostSentences))
      ) {
        beat = { steps: [], words: 0, sentences: 0 };
        beats.push(beat);
      }
      beat.steps.push(step);
      beat.words += words;
      beat.sentences += sentences;
      knowledge = after(knowledge, board, step);
    }
  }
  return beats.map(({ steps }) => steps);
};
