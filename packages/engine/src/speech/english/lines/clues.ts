import { count, type Digits, either, isOne, min, none, without } from "../../../board/digits.ts";
import { isSettled } from "../../../board/knowledge.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Part } from "../../line.ts";
import { aDigit, aDigitOf, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { sentence } from "../sentence.ts";
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

/** "they share a row, so they differ": the houses that the clue's cells share. */
const sharing = ({ deduction, nouns, board }: Telling): string => {
  const houses = deduction.because.houses.filter((id) => board.house(id));
  if (houses.length === 0) return "";
  return houses.length < 3
    ? `, and its cells differ in ${nouns.houses(houses)}`
    : ", and cells that share a house differ";
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

const clueNames = ({ nouns }: Telling, rules: readonly string[]): string => {
  const names = rules.map((id) => nouns.rule(id));
  if (nouns.style === "pointing" && new Set(names).size === 1 && names.length > 1) {
    const { plural } = nouns.words(rules[0]!);
    return `these ${counted(names.length)} ${plural}`;
  }
  return listed(names);
};

/** One clue, with what stands on it and what is known of its cells. */
export const clue: Phrase = (telling) => {
  const { deduction, nouns, board } = telling;
  const [rule] = deduction.because.rules;
  const { settled, settledCells, open, own } = knownOf(telling);
  const isPair = board.rule(rule!)!.wholeGrid;
  const name = isPair ? `with no ${nouns.words(rule!).noun.replace(/^missing /, "")} between them` : nouns.rule(rule!);
  const ruled = because(name, { rule: rule! });
  const share = sharing(telling);
  const out =
    own !== undefined && deduction.places.size > 0 && count(own) <= 3
      ? `, and this could only be ${aDigitOf(own)}`
      : "";
  const aside = nouns.style === "placed" ? out.replace("this could", "that cell could") : out;
  if (isPair)
    return sentence(
      ruled,
      settled.length > 0 ? ` and a ${listed(settled)} beside it` : "",
      openSaid(telling, open).length > 0
        ? [{ text: ", where ", role: "plain" } as Part, ...openSaid(telling, open)]
        : "",
      ", ",
      conclusion(telling),
    );
  if (settled.length === 0 && open.length === 0) {
    if (deduction.places.size > 0) return sentence(ruled, ` fits only one way here${share}${aside}: `, placed(telling));
    return sentence(ruled, " ", thatLeaves(telling), share);
  }
  const stands =
    settled.length === 0
      ? []
      : [
          because(` has ${settled.length > 3 ? `${counted(settled.length)} digits` : listed(settled)} already`, {
            cells: namesOf(board, settledCells),
          }),
        ];
  const left = openSaid(telling, open);
  const hence = share || aside ? ": " : ", so ";
  if (stands.length === 0) return sentence(left, " on ", ruled, share, aside, hence, conclusion(telling));
  return sentence(
    ruled,
    stands,
    left.length > 0 ? [{ text: " and ", role: "plain" } as Part, ...left] : "",
    share,
    aside,
    hence,
    conclusion(telling),
  );
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
