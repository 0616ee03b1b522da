import { has, listOf, only } from "../../../board/digits.ts";
import { linksBetween } from "../../../board/links.ts";
import type { Deduction } from "../../../deduce/deduction.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import { type Part, textOf, wordsIn } from "../../line.ts";
import { aDigit, counted, digitsSaid } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { mostWords, sentence, sentences } from "../sentence.ts";

/** "That's a 3": what follows elsewhere, when `this` is the cell that is tried. */
const follows = ({ board, nouns }: Telling, step: Deduction): Part | undefined => {
  const [place] = step.places;
  if (place) {
    const is = nouns.style === "pointing" ? "that's" : `${nouns.cell(place[0])} is`;
    return because(`${is} ${aDigit(place[1])}`, { cells: namesOf(board, [place[0]]) });
  }
  const [removal] = step.removes;
  if (!removal) return undefined;
  const where = nouns.style === "pointing" ? "that one" : nouns.cell(removal[0]);
  return because(`${where} loses the ${digitsSaid(removal[1])}`, { cells: namesOf(board, [removal[0]]) });
};

/** Whether these reasons show by themselves that the cell can't hold the digit: by its own marks, or by one that it sees. */
const isBarred = ({ board }: Telling, { because: { facts } }: Deduction, cell: Cell, digit: number): boolean =>
  !has(board.domains[cell]!, digit) ||
  (facts.has(cell) && !has(facts.get(cell)!, digit)) ||
  [...facts].some(
    ([other, digits]) => digits === only(digit) && other !== cell && linksBetween(board, cell, other).length > 0,
  );

/** What has nothing left, as the reasons show it: a digit of a house, a cell, or a clue. */
const nothingLeft = (telling: Telling, end: Deduction): string => {
  const { nouns, board } = telling;
  for (const id of end.because.houses) {
    const { cells, digits, complete } = board.house(id)!;
    const homeless = listOf(digits).find((digit) => cells.every((cell) => isBarred(telling, end, cell, digit)));
    if (complete && homeless !== undefined) return `the ${homeless} of ${nouns.house(id)} has nowhere to go`;
  }
  const cell = board.domains.findIndex((digits, k) =>
    listOf(digits).every((digit) => isBarred(telling, end, k, digit)),
  );
  if (cell >= 0)
    return nouns.style === "pointing" ? "that cell has nothing left" : `${nouns.cell(cell)} has nothing left`;
  const [rule] = end.because.rules;
  if (rule) return `${nouns.rule(rule)} can't be met`;
  return `${nouns.houses(end.because.houses)} can't be filled${end.because.houses.length > 1 ? " together" : ""}`;
};

/** Both sides are heard: what is tried, what follows, and that it can't be. */
export const whatIf: Phrase = (telling) => {
  const { deduction, nouns, board } = telling;
  const [cell, digit] = deduction.assume!;
  const steps = deduction.steps!;
  const chain = steps
    .slice(0, -1)
    .map((step) => follows(telling, step))
    .filter((part) => part !== undefined);
  const shown = chain.slice(0, 3);
  const more = chain.length - shown.length;
  const end = nothingLeft(telling, steps.at(-1)!);
  const middle: (string | Part)[] = shown.flatMap((part, k) => (k === 0 ? [part] : [", ", part]));
  if (more > 0) middle.push(`, ${counted(more)} more ${more === 1 ? "follows" : "follow"}`);
  const tried = `say ${nouns.style === "pointing" ? "this" : nouns.cell(cell)} were ${aDigit(digit)}: then `;
  const whole = sentence(tried, ...middle, middle.length > 0 ? ", and " : "", end);
  const isShort = middle.length === 0 || wordsIn(textOf(whole)) <= mostWords;
  return sentences(
    ...(isShort ? [whole] : [sentence(tried, ...middle), sentence("then ", end)]),
    sentence(so(`so it isn't ${aDigit(digit)}`, { cells: namesOf(board, [cell]) })),
  );
};

/** The end of a what-if by itself. */
export const contradiction: Phrase = (telling) => sentence(nothingLeft(telling, telling.deduction));
