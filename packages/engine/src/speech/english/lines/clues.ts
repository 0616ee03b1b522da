import { type Digits, isOne, min } from "../../../board/digits.ts";
import { isSettled } from "../../../board/knowledge.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Part } from "../../line.ts";
import { aDigit, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { sentence } from "../sentence.ts";
import { outcome } from "./removals.ts";

const settledDigits = ({ deduction, before }: Telling, cells: readonly Cell[]): number[] =>
  [...deduction.because.facts].filter(([cell, digits]) => cells.includes(cell) && isSettled(before, cell) && isOne(digits)).map(([, digits]) => min(digits));

const openFacts = ({ deduction, before }: Telling): [Cell, Digits][] => [...deduction.because.facts].filter(([cell]) => !isSettled(before, cell));

const placed = ({ deduction, board, nouns }: Telling): Part | undefined => {
  const [place] = deduction.places;
  if (!place) return undefined;
  const [cell, digit] = place;
  const names = { cells: namesOf(board, [cell]) };
  return so(nouns.style === "pointing" ? `this is ${aDigit(digit)}` : `${nouns.cell(cell)} is ${aDigit(digit)}`, names);
};

const conclusion = (telling: Telling): Part => placed(telling) ?? outcome(telling);

/** What is known beside the clue: settled digits on it, and marks. */
const given = (telling: Telling, cells: readonly Cell[]): Part[] => {
  const { nouns, board } = telling;
  const digits = settledDigits(telling, cells);
  const open = openFacts(telling);
  const target = telling.deduction.places.keys().next().value;
  const marks = open.filter(([cell]) => cell !== target).slice(0, 2);
  const has = digits.length === 0 ? [] : [because(`with the ${listed(digits)} on it`, { cells: namesOf(board, cells.filter((cell) => isSettled(telling.before, cell))) })];
  const could = marks.map(([cell, left]) => {
    const name = nouns.style === "pointing" ? "this" : nouns.cell(cell);
    return because(`${name} is ${digitsSaid(left, "or")}`, { cells: namesOf(board, [cell]) });
  });
  return [...has, ...could].flatMap((part, k): Part[] => (k === 0 ? [part] : [{ text: " and ", role: "plain" }, part]));
};

/** They differ, as they share a house. */
const apart = ({ deduction, nouns, board }: Telling): string => {
  const houses = deduction.because.houses.filter((id) => board.house(id));
  if (houses.length === 0) return "";
  const which = nouns.style === "pointing" && houses.length === 1 ? `a ${nouns.sort(houses[0]!)}` : nouns.houses(houses);
  return `, and cells that share ${which} differ`;
};

const saysOf = (telling: Telling, rule: string): string => {
  const { nouns, board } = telling;
  const { holds } = nouns.words(rule);
  const cells = board.rule(rule)!.cells.length;
  const subject = nouns.rule(rule);
  if (board.rule(rule)!.wholeGrid) return `${subject.replace(/^this /, "a ")} means the two ${holds}`;
  return `${cells === 2 ? "the two" : `the ${counted(cells)} cells`} on ${subject} ${holds}`;
};

export const clue: Phrase = (telling) => {
  const [rule] = telling.deduction.because.rules;
  const cells = telling.board.rule(rule!)!.cells;
  const known = given(telling, cells);
  const reason = because(`${saysOf(telling, rule!)}${apart(telling)}`, { rule: rule! });
  return sentence(reason, known.length > 0 ? [{ text: "; ", role: "plain" } as Part, ...known] : "", ", so ", conclusion(telling));
};

