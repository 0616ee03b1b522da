import { count, type Digits, either, isOne, min, none, without } from "../../../board/digits.ts";
import { isSettled } from "../../../board/knowledge.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Part } from "../../line.ts";
import { aDigit, aDigitOf, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { sentence, sentences } from "../sentence.ts";
import { outcome, thatLeaves } from "./removals.ts";

interface Known {
  /** Digits that stand on the clues. */
  readonly settled: readonly number[];
  readonly settledCells: readonly Cell[];
  /** Open cells of which something is known, without the one that is concluded. */
  readonly open: readonly (readonly [Cell, Digits])[];
  /** What is known of the concluded cell itself. */
  readonly own: Digits | undefined;
}

const knownOf = ({ deduction, before }: Telling): Known => {
  const facts = [...deduction.because.facts];
  const settled = facts.filter(([cell, digits]) => isSettled(before, cell) && isOne(digits));
  const target = [...deduction.places.keys(), ...deduction.removes.keys()];
  const open = facts.filter(([cell]) => !isSettled(before, cell));
  const single = target.length === 1 ? target[0] : undefined;
  return {
    settled: settled.map(([, digits]) => min(digits)),
    settledCells: settled.map(([cell]) => cell),
    open: open.filter(([cell]) => cell !== single),
    own: open.find(([cell]) => cell === single)?.[1],
  };
};

const placed = ({ deduction, board, nouns }: Telling): Part | undefined => {
  const [place] = deduction.places;
  if (!place) return undefined;
  const [cell, digit] = place;
  return so(nouns.style === "pointing" ? `this is ${aDigit(digit)}` : `${nouns.cell(cell)} is ${aDigit(digit)}`, {
    cells: namesOf(board, [cell]),
  });
};

/** "This X lies in one row, so its digits differ": the houses that the clue's cells share, as a sentence of its own. */
const sharing = ({ deduction, nouns, board }: Telling, rule: string): Part[] => {
  const houses = deduction.because.houses.filter((id) => board.house(id));
  const [house] = houses;
  if (!house) return [];
  const inside = board.rule(rule)!.cells.every((cell) => board.house(house)!.cells.includes(cell));
  const where = nouns.style === "pointing" ? `one ${nouns.sort(house)}` : nouns.house(house);
  const text =
    inside && houses.length === 1
      ? `${nouns.rule(rule)} lies in ${where}, so its digits differ`
      : `cells of ${nouns.rule(rule)} that share ${houses.length > 2 ? "a house" : nouns.houses(houses)} differ`;
  return sentence(because(text, { rule }));
};

const openSaid = ({ nouns, board }: Telling, open: readonly (readonly [Cell, Digits])[]): Part[] => {
  const digits = open.reduce<Digits>((all, [, left]) => either(all, left), none);
  const cells = open.map(([cell]) => cell);
  const name =
    nouns.style === "placed" ? nouns.cells(cells) : cells.length === 1 ? "this one" : `these ${counted(cells.length)}`;
  const missing = open.reduce<Digits>((all, [cell, left]) => either(all, without(board.domains[cell]!, left)), none);
  const said =
    count(digits) <= 4 || count(missing) > 3
      ? `${cells.length === 1 ? "is" : "are"} ${digitsSaid(digits, "or")}`
      : `${cells.length === 1 ? "isn't" : "aren't"} ${aDigitOf(missing)}`;
  return open.length === 0 ? [] : [because(`${name} ${said}`, { cells: namesOf(board, cells) })];
};

const conclusion = (telling: Telling): Part => placed(telling) ?? outcome(telling);

/** Several clues together: "these two black dots" where they are alike. */
export const clueNames = ({ nouns }: Telling, rules: readonly string[]): string => {
  const names = rules.map((id) => nouns.rule(id));
  if (nouns.style === "pointing" && new Set(names).size === 1 && names.length > 1) {
    const { plural } = nouns.words(rules[0]!);
    return `these ${counted(names.length)} ${plural}`;
  }
  return listed(names);
};

/** A clue between neighbours that is there because no mark is: "with no dot between them". */
const bareClue = (telling: Telling, rule: string, { settled, open }: Known): Part[] => {
  const mark = telling.nouns.words(rule).noun.replace(/^missing /, "");
  const where = openSaid(telling, open);
  return sentence(
    because(`with no ${mark} between them`, { rule }),
    settled.length > 0 ? ` and a ${listed(settled)} beside it` : "",
    where.length > 0 ? [{ text: ", where ", role: "plain" } as Part, ...where] : "",
    ", ",
    conclusion(telling),
  );
};

/** What stands on the clue already. */
const standing = ({ board }: Telling, { settled, settledCells }: Known): Part[] => {
  const digits = settled.length > 3 ? `${counted(settled.length)} digits` : listed(settled);
  return settled.length === 0 ? [] : [because(` has ${digits} already`, { cells: namesOf(board, settledCells) })];
};

/** What follows; a cell that has few digits left is named by them: "this 1 or 3 is a 3". */
const follows = (telling: Telling, own: Digits | undefined): Part => {
  const { deduction, nouns, board } = telling;
  const [place] = deduction.places;
  if (!place || own === undefined || count(own) > 2) return conclusion(telling);
  const [cell, digit] = place;
  const name =
    nouns.style === "pointing" ? `this ${digitsSaid(own, "or")}` : `${nouns.cell(cell)}, ${digitsSaid(own, "or")},`;
  return so(`${name} is ${aDigit(digit)}`, { cells: namesOf(board, [cell]) });
};

/** One clue, with what stands on it and what is known of its cells. */
export const clue: Phrase = (telling) => {
  const { deduction, nouns, board } = telling;
  const [rule] = deduction.because.rules as [string];
  const known = knownOf(telling);
  if (board.rule(rule)!.wholeGrid) return bareClue(telling, rule, known);
  const ruled = because(nouns.rule(rule), { rule });
  const stands = standing(telling, known);
  const left = openSaid(telling, known.open);
  const first = sharing(telling, rule);
  const told = (...pieces: readonly (string | Part | readonly Part[])[]): Part[] =>
    sentences(first, sentence(...pieces));
  if (stands.length === 0 && left.length === 0)
    return deduction.places.size > 0
      ? told(ruled, " fits only one way here: ", follows(telling, known.own))
      : told(ruled, " ", thatLeaves(telling));
  if (stands.length === 0) return told(left, " on ", ruled, ", so ", follows(telling, known.own));
  const and: readonly Part[] = left.length > 0 ? [{ text: " and ", role: "plain" }, ...left] : [];
  return told(ruled, stands, and, ", so ", follows(telling, known.own));
};

/** A house and clues, or several clues, taken together. */
export const joint: Phrase = (telling) => {
  const { deduction, nouns, board } = telling;
  const { rules, houses } = deduction.because;
  const whole = houses.filter((id) => board.house(id)!.complete);
  const where = whole.length === 0 ? "" : `${rules.length > 0 ? " and " : ""}${nouns.house(whole[0]!)}`;
  const clues = rules.length === 0 ? "" : because(clueNames(telling, rules), { rule: rules[0]! });
  const { open } = knownOf(telling);
  const said =
    open.length > 0 && open.length <= 2 ? [{ text: "; ", role: "plain" } as Part, ...openSaid(telling, open)] : [];
  const placedPart = placed(telling);
  return sentence(
    "however we fill ",
    clues,
    where === "" ? "" : because(where, { house: whole[0]! }),
    said,
    ", ",
    placedPart ?? outcome(telling),
  );
};

/** A house's total against the sums in it. */
export const sums: Phrase = (telling) => {
  const { deduction, nouns, board } = telling;
  const [{ plus, minus }] = deduction.because.counts as [{ plus: readonly string[]; minus: readonly string[] }];
  const { kind, instance } = board.rule(minus[0]!)!;
  const { plural } = kind.words(instance);
  const total = plus.reduce((sum, id) => sum + digitsTotal(board.house(id)!.digits), 0);
  const made = minus.reduce((sum, id) => sum + sumOf(telling, id), 0);
  const cells = [...new Set(plus.flatMap((id) => board.house(id)!.cells))];
  const covered = minus.flatMap((id) => board.rule(id)!.cells);
  const out = covered.filter((cell) => !cells.includes(cell));
  const inside = cells.filter((cell) => !covered.includes(cell));
  const subject = `${nouns.houses(plus)} ${plus.length === 1 ? "makes" : "make"} ${total}, and ${minus.length === 1 ? "its" : `${counted(minus.length)} of the`} ${minus.length === 1 ? kind.words(instance).noun : plural} ${minus.length === 1 ? "makes" : "make"} ${made}`;
  const who = (list: readonly Cell[]): string => (list.length === 1 ? "the cell" : `the ${counted(list.length)} cells`);
  const rest =
    out.length === 0
      ? `${who(inside)} left over ${inside.length === 1 ? "is" : "make"} ${total - made}`
      : inside.length === 0
        ? `${who(out)} sticking out ${out.length === 1 ? "is" : "make"} ${made - total}`
        : `what sticks out is ${Math.abs(made - total)} ${made >= total ? "more" : "less"} than what is left over`;
  const end =
    inside.length + out.length === 1
      ? so(rest, { cells: namesOf(board, [...inside, ...out]) })
      : because(rest, { cells: namesOf(board, [...inside, ...out]) });
  if (inside.length + out.length === 1) return sentence(because(subject, { house: plus[0]! }), ": ", end);
  return sentence(because(subject, { house: plus[0]! }), ": ", end, ". So ", conclusion(telling));
};

const digitsTotal = (digits: Digits): number => {
  let sum = 0;
  for (let digit = 0; digit < 32; digit++) if ((digits >>> digit) & 1) sum += digit;
  return sum;
};

const sumOf = ({ board }: Telling, id: string): number => {
  const { kind, instance } = board.rule(id)!;
  const term = kind.terms(instance).find((term) => term.term === "sum");
  return term?.term === "sum" ? term.equals : 0;
};
