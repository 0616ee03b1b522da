import type { Board } from "../board/board.ts";
import { type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Burst } from "../deduce/chain.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { textOf, wordsIn } from "../speech/line.ts";
import { lineOf, type Spoken } from "./line.ts";
import type { Voice } from "./voice.ts";

/** More than this is two beats (SPEECH.md, rule 1); a word that sets a line off from the one before may come on top. */
const roomForOpening = 1;
const mostWords = 40 - roomForOpening;
const mostSentences = 3;
/** So many digits in one beat; at the end of a show, where nothing hangs on them any more, some more. */
const mostDigits = 6;
const mostAtTheEnd = 8;
/** Digits up to this level are joined; a beat that has come to something higher is left alone with it. */
const joinedTo = 2;

const sentencesIn = (text: string): number => text.match(/[.?!](\s|$)/g)?.length ?? 0;

/** Whether these steps can be said in one breath. */
export const fitsOneBreath = (steps: readonly Spoken[], from: Knowledge, voice: Voice): boolean => {
  const text = textOf(lineOf(steps, from, voice, "pointing"));
  return wordsIn(text) <= mostWords && sentencesIn(text) <= mostSentences;
};

/** One step that gives one digit, of no higher level than this. */
const isSingle = (steps: readonly Deduction[], most: number): boolean =>
  steps.length === 1 && steps.every(({ level, places }) => level <= most && places.size === 1);

const placed = (steps: readonly Deduction[]): Cell[] => steps.flatMap(({ places }) => [...places.keys()]);

const shareHouse = (board: Board, cells: readonly Cell[], cell: Cell): boolean =>
  board.houses.some((house) => house.cells.includes(cell) && cells.some((other) => house.cells.includes(other)));

const shareGrid = (board: Board, a: Cell, b: Cell): boolean =>
  board.canvas.grids[a]!.some((grid) => board.canvas.grids[b]!.includes(grid));

/** How far the eye may have to look back for what the next easy digit has to do with the last ones. */
const near = 2;

/** Whether an easy digit goes on from the steps of a beat: near the last ones, or a last cell after a last cell of its grid (at the end of any). */
const goesOn = (board: Board, beat: readonly Deduction[], step: Deduction, isRunOut: boolean): boolean => {
  const [cell] = placed([step]);
  const before = placed(beat).slice(-near);
  if (before.length === 0 || beat.some(({ level }) => level > joinedTo)) return false;
  if (shareHouse(board, before, cell!)) return true;
  const isRun = [step, beat.at(-1)!].every(({ technique }) => technique === "last-cell");
  return isRun && (isRunOut || shareGrid(board, before.at(-1)!, cell!));
};

/** What the presenter wants featured, or says in other words, is not mixed with anything else. */
const isAlone = (steps: readonly Deduction[], { featured, words }: Voice): boolean =>
  steps.some((step) => featured.has(step) || words.has(step));

const unrecalled = (steps: readonly Deduction[]): Spoken[] => steps.map((deduction) => ({ deduction, again: [] }));

/**
 * Groups the steps into what is said in one breath: the steps that lead to a digit stay together, easy digits near each
 * other are taken together, and what gets too long is cut in two.
 */
export const beatsOf = (bursts: readonly Burst[], voice: Voice): (readonly Deduction[])[] => {
  const { board } = voice;
  const beats: Deduction[][] = [];
  let knowledge = startOf(board);
  let from = knowledge;
  const easyFrom = bursts.findLastIndex((burst) => !isSingle(burst, 1)) + 1;
  for (const [index, burst] of bursts.entries()) {
    const current = beats.at(-1);
    const isRunOut = index >= easyFrom;
    const most = isRunOut ? mostAtTheEnd : mostDigits;
    const joins =
      current &&
      !isAlone(burst, voice) &&
      !isAlone(current, voice) &&
      isSingle(burst, joinedTo) &&
      placed(current).length < most &&
      goesOn(board, current, burst[0]!, isRunOut);
    let beat = joins ? current : undefined;
    for (const step of burst) {
      if (!beat || (beat.length > 0 && !fitsOneBreath(unrecalled([...beat, step]), from, voice))) {
        beat = [];
        from = knowledge;
        beats.push(beat);
      }
      beat.push(step);
      knowledge = after(knowledge, board, step);
    }
  }
  return beats;
};
