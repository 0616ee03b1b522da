import { type Digits, min, none } from "../../../board/digits.ts";
import { type Branch, type EitherWay, eitherWayIn, type Forced } from "../../../deduce/either-way.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import { type Part, textOf, wordsIn } from "../../line.ts";
import { aDigit, counted, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { mostWords, sentence, sentences } from "../sentence.ts";
import { joint } from "./clues.ts";
import { outcome } from "./removals.ts";

const isHouse = (pivot: EitherWay["pivot"]): pivot is Exclude<EitherWay["pivot"], Cell> => typeof pivot !== "number";

/** "This cell is a 3 or a 5", "the 8 of this row is in one of these two cells": of the alternatives one is true. */
const alternatives = ({ nouns, board }: Telling, { pivot, branches }: EitherWay): Part => {
  const cells = branches.flatMap(({ from }) => from.cells);
  const { digit } = branches[0]!.from;
  if (!isHouse(pivot)) {
    const digits = listed(
      branches.map(({ from }) => aDigit(from.digit)),
      "or",
    );
    return because(`${nouns.style === "pointing" ? "that cell" : nouns.cell(pivot)} is ${digits}`, {
      cells: namesOf(board, [pivot]),
    });
  }
  const where =
    nouns.style === "pointing" ? `one of these ${counted(cells.length)} cells` : `one of ${nouns.cells(cells)}`;
  return because(`the ${digit} of ${nouns.house(pivot.id)} is in ${where}`, { cells: namesOf(board, cells) });
};

/** "with a 3", "in the second", "in those two": one alternative. */
const supposed = ({ nouns }: Telling, { pivot, branches }: EitherWay, k: number): string => {
  const { cells, digit } = branches[k]!.from;
  if (!isHouse(pivot)) return `with ${aDigit(digit)}`;
  if (nouns.style === "placed") return cells.length === 1 ? nouns.here(cells[0]!) : `in ${nouns.cells(cells)}`;
  if (branches.every(({ from }) => from.cells.length === 1)) return `in the ${["first", "second", "third"][k]}`;
  return cells.length === 1 ? "in that one" : `in those ${counted(cells.length)}`;
};

/** "row 3, column 4 is a 5", "the 5 of row 3 is in columns 4 and 6". */
const placed = ({ nouns }: Telling, { cells, digit, by }: Forced): string => {
  const [cell] = cells as [Cell];
  if (cells.length === 1 || by === "cell") return `${nouns.cell(cell)} is ${aDigit(digit)}`;
  return `the ${digit} of ${nouns.house(by.id)} is in ${nouns.cells(cells)}`;
};

/** "that one is a 5", "that row's 5 goes there", and of the one before: "the next is a 5", "that other row's 5". */
const pointed = ({ nouns }: Telling, { cells, digit, by }: Forced, before?: Forced): string => {
  if (by === "cell") return `${before?.by === "cell" ? "the next" : "that one"} is ${aDigit(digit)}`;
  const sort = nouns.sort(by.id);
  const isAlike = before !== undefined && before.by !== "cell" && nouns.sort(before.by.id) === sort;
  const where = cells.length === 1 ? "there" : `in those ${counted(cells.length)}`;
  return `that ${isAlike ? `other ${sort}` : sort}'s ${digit} goes ${where}`;
};

/** What follows, one after the other. */
const chain = (telling: Telling, forced: readonly Forced[]): (string | Part)[] =>
  forced.flatMap((one, k): (string | Part)[] => {
    const text = telling.nouns.style === "placed" ? placed(telling, one) : pointed(telling, one, forced[k - 1]);
    const part = because(text, { cells: namesOf(telling.board, one.cells) });
    return k === 0 ? [part] : [" and ", part];
  });

/** What bars the target in the end, where that is not plain from the digit itself. */
const barred = ({ nouns }: Telling, { bar, forced }: Branch): (string | Part)[] => {
  if (bar?.kind === "rule")
    return [because(`${forced.length > 0 ? "and " : ""}${nouns.rule(bar.id)} bars it`, { rule: bar.id })];
  if (forced.length > 0) return [];
  return [bar ? "it's seen at once" : "it's full"];
};

const branch = (telling: Telling, way: EitherWay, k: number): (string | Part)[] => {
  const { forced } = way.branches[k]!;
  const end = barred(telling, way.branches[k]!);
  const then = chain(telling, forced);
  return [supposed(telling, way, k), ", ", ...then, ...(then.length > 0 && end.length > 0 ? [" "] : []), ...end];
};

const isShort = (parts: readonly Part[]): boolean => wordsIn(textOf(parts)) <= mostWords;

/** The branches in one sentence where that is short enough, else each in its own. */
const branchesSaid = (telling: Telling, way: EitherWay): Part[][] => {
  const all = way.branches.map((_, k) => branch(telling, way, k));
  const whole = sentence(...all.flatMap((one, k) => (k === 0 ? one : ["; ", ...one])));
  return isShort(whole) ? [whole] : all.map((one) => sentence(...one));
};

/** Two or three alternatives and what follows from each: they come to the same. */
export const eitherWay: Phrase = (telling) => {
  const { deduction, board } = telling;
  const [[cell, digits] = [0, none as Digits]] = deduction.removes;
  const way = eitherWayIn(deduction.because, cell, min(digits), board);
  if (!way) return joint(telling);
  const end = outcome(telling);
  return sentences(
    sentence(alternatives(telling, way)),
    ...branchesSaid(telling, way),
    sentence(way.branches.length === 2 ? "either way " : "in each case ", so(end.text, end.of)),
  );
};
