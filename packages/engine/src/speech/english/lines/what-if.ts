import type { Deduction } from "../../../deduce/deduction.ts";
import type { Part } from "../../line.ts";
import { aDigit, counted, digitsSaid } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { sentence, sentences } from "../sentence.ts";

const follows = ({ board, nouns }: Telling, step: Deduction): Part | undefined => {
  const [place] = step.places;
  if (place) {
    const name = nouns.style === "pointing" ? "this" : nouns.cell(place[0]);
    return because(`${name} is ${aDigit(place[1])}`, { cells: namesOf(board, [place[0]]) });
  }
  const [removal] = step.removes;
  if (!removal) return undefined;
  const where = nouns.style === "pointing" ? "this" : nouns.cell(removal[0]);
  return because(`${where} loses the ${digitsSaid(removal[1])}`, { cells: namesOf(board, [removal[0]]) });
};

const nothingLeft = ({ nouns, board }: Telling, { because: why }: Deduction): string => {
  const [rule] = why.rules;
  if (rule) return `${nouns.rule(rule)} can't be met`;
  const [house] = why.houses;
  const isHouse = house && why.houses.length === 1 && board.house(house)!.complete;
  return isHouse ? `${nouns.house(house)} has a digit with nowhere to go` : "a cell has nothing left";
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
  const middle = shown.flatMap((part, k): Part[] => (k === 0 ? [part] : [{ text: ", ", role: "plain" }, part]));
  const end = `${nothingLeft(telling, steps.at(-1)!)}`;
  return sentences(
    sentence(
      `say ${nouns.style === "pointing" ? "this" : nouns.cell(cell)} were ${aDigit(digit)}: then `,
      middle,
      more > 0 ? `, ${counted(more)} more follow` : "",
      middle.length > 0 ? ", and " : "",
      end,
    ),
    sentence(so(`so it isn't ${aDigit(digit)}`, { cells: namesOf(board, [cell]) })),
  );
};
