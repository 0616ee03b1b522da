import type { Board } from "../../board/board.ts";
import { count, type Digits, either, none, without } from "../../board/digits.ts";
import { at, type Knowledge } from "../../board/knowledge.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import type { Part, Style } from "../line.ts";
import { phrase } from "../phrase.ts";
import { counted, digitsSaid, listed } from "./counts.ts";
import { because, type Nouns, nounsFor, so } from "./nouns.ts";
import { namesOf } from "./phrase.ts";
import { recalled, sentence } from "./sentence.ts";

/** More clues or houses than this are counted and not named. */
const mostNamed = 2;

const namesOfReason = ({ because }: Deduction, nouns: Nouns): readonly string[] => {
  const { rules, houses, counts } = because;
  if (counts?.[0]) return [`the sums of ${nouns.houses(counts[0].plus)}`];
  if (rules.length === 0) return nouns.houseNames(houses);
  if (rules.length <= mostNamed)
    return rules.map((id) => (nouns.style === "pointing" ? `this ${nouns.words(id).noun}` : nouns.rule(id)));
  const plurals = new Set(rules.map((id) => nouns.words(id).plural));
  const clues = `${counted(rules.length)} ${plurals.size === 1 ? [...plurals][0] : "clues"}`;
  return [nouns.style === "pointing" ? `these ${clues}` : `the ${clues}`];
};

const isOne = (names: readonly string[]): boolean =>
  names.length === 1 && !/^(these|the sums|the \w+ \w+s$)/.test(names[0]!);

/** What was known of the cells once the digits were gone, where it is the same few of each. */
const fewLeft = (removes: ReadonlyMap<number, Digits>, now: Knowledge): Digits | undefined => {
  const left = new Set([...removes].map(([cell, digits]) => without(at(now, cell), digits)));
  const [one] = left;
  return left.size === 1 && count(one!) >= 2 && count(one!) <= 3 ? one : undefined;
};

/**
 * An earlier step's reason said again in a clause: "Remember, this cage of 9 left only 3 and 5 here." What does no more
 * than take digits out is said short; else the whole reason comes back.
 */
export const recallOf = (earlier: Deduction, now: Knowledge, board: Board, style: Style): Part[] => {
  const { removes, places, spots, relates, assume, because: reasons } = earlier;
  const isShort = removes.size > 0 && places.size + spots.length + relates.length === 0 && !assume;
  if (!isShort || reasons.houses.length + reasons.rules.length === 0)
    return recalled(phrase(earlier, now, board, style));
  const nouns = nounsFor(board, style, board.house(reasons.houses[0] ?? "")?.grid);
  const cells = [...removes.keys()];
  const names = namesOfReason(earlier, nouns);
  const reason = because(
    `remember, ${listed(names)}`,
    reasons.rules[0] ? { rule: reasons.rules[0] } : { house: reasons.houses[0]! },
  );
  const of = { cells: namesOf(board, cells) };
  const left = fewLeft(removes, now);
  if (left !== undefined)
    return sentence(
      reason,
      " left only ",
      so(`${digitsSaid(left)} ${cells.length === 1 ? nouns.here(cells[0]!) : `in ${nouns.cells(cells)}`}`, of),
    );
  const gone = [...removes.values()].reduce<Digits>(either, none);
  const where = cells.length > 1 && style === "pointing" ? `these ${counted(cells.length)}` : nouns.cells(cells);
  return sentence(reason, isOne(names) ? " keeps " : " keep ", so(`${digitsSaid(gone, "and")} out of ${where}`, of));
};
