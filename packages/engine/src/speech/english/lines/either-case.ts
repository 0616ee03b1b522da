import { count, type Digits, digitsOf, has, isEmpty, listOf, only, without } from "../../../board/digits.ts";
import { casesOf } from "../../../deduce/cases.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Term } from "../../../terms/term.ts";
import type { Part } from "../../line.ts";
import { aDigit, aDigitOf, digitsSaid } from "../counts.ts";
import { because } from "../nouns.ts";
import { namesOf, type Telling } from "../phrase.ts";
import { sentence, sentences } from "../sentence.ts";
import { premisesOf, takenBy } from "./reasons.ts";

/** Tries for one question before it counts as not answered. */
const mostTries = 400;

/** A digit in a cell, one of two of which one is so. */
interface Case {
  readonly cell: Cell;
  readonly digit: number;
}

/** What gives the conclusion in a case: a clue or a house by its id, or sight alone. */
type Giver = { readonly id: string; readonly isFull: boolean } | "sight";

interface Looking {
  readonly telling: Telling;
  readonly target: Cell;
  readonly out: Digits;
  readonly known: (cell: Cell) => Digits;
  readonly differ: (a: Cell, b: Cell) => boolean;
}

/** By cell what is left once the digit stands. */
const inCase =
  ({ known, differ }: Looking, { cell, digit }: Case) =>
  (other: Cell): Digits => {
    if (other === cell) return only(digit);
    return differ(other, cell) ? without(known(other), only(digit)) : known(other);
  };

/** What a clue leaves of its cells, or that it can't be met; undefined where that takes too many tries. */
const leftBy = ({ telling }: Looking, rule: string, now: (cell: Cell) => Digits) => {
  const { board, deduction } = telling;
  const { kind, instance } = board.rule(rule)!;
  const terms = kind.terms(instance);
  const cells = [...new Set(terms.flatMap((term) => term.cells))];
  const apart = deduction.because.houses.flatMap((id): Term[] => {
    const shared = board.house(id)!.cells.filter((cell) => cells.includes(cell));
    return shared.length < 2 ? [] : [{ term: "different", owner: id, cells: shared }];
  });
  const start = cells.map(now);
  const left = start.some(isEmpty) ? start : casesOf(cells, [...terms, ...apart]).possible(start, mostTries);
  return left && { cells, left, isFull: left.some(isEmpty) };
};

/** Whether the only place that a listed house has left for the digit of the conclusion is its cell. */
const houseOf = ({ telling, target }: Looking, now: (cell: Cell) => Digits): string | undefined => {
  const { board, deduction } = telling;
  const digit = deduction.places.get(target);
  if (digit === undefined) return undefined;
  return deduction.because.houses.find((id) => {
    const { cells, complete } = board.house(id)!;
    return complete && cells.includes(target) && cells.every((cell) => cell === target || !has(now(cell), digit));
  });
};

const giverIn = (looking: Looking, one: Case): Giver | undefined => {
  const { telling, target, out, differ } = looking;
  const now = inCase(looking, one);
  const gone = (left: Digits): boolean => (left & out) === 0;
  if (gone(now(target))) return "sight";
  const house = houseOf(looking, now);
  if (house !== undefined) return { id: house, isFull: false };
  for (const rule of telling.deduction.because.rules) {
    const found = leftBy(looking, rule, now);
    if (!found) continue;
    if (found.isFull) return { id: rule, isFull: true };
    const narrowed = (cell: Cell): Digits => {
      const k = found.cells.indexOf(cell);
      return k < 0 ? now(cell) : found.left[k]!;
    };
    const seen = found.cells.reduce<Digits>(
      (left, cell) => (count(narrowed(cell)) === 1 && differ(cell, target) ? without(left, narrowed(cell)) : left),
      narrowed(target),
    );
    if (gone(seen) || houseOf(looking, narrowed) !== undefined) return { id: rule, isFull: false };
  }
  return undefined;
};

/** Every two digits of which one must be: those of a cell with two left, the two places of a digit in a listed house. */
function* eithers({ telling, target, known }: Looking): Generator<{ cases: readonly [Case, Case]; house?: string }> {
  const { board, deduction } = telling;
  const { facts, houses, rules } = deduction.because;
  const cells = new Set([...facts.keys(), ...rules.flatMap((id) => board.rule(id)!.cells)]);
  for (const cell of cells) {
    const digits = listOf(known(cell));
    if (cell !== target && digits.length === 2)
      yield {
        cases: [
          { cell, digit: digits[0]! },
          { cell, digit: digits[1]! },
        ],
      };
  }
  for (const house of houses) {
    const { cells: own, digits, complete } = board.house(house)!;
    for (const digit of complete ? listOf(digits) : []) {
      const places = own.filter((cell) => has(known(cell), digit));
      if (places.length === 2 && !places.includes(target))
        yield {
          cases: [
            { cell: places[0]!, digit },
            { cell: places[1]!, digit },
          ],
          house,
        };
    }
  }
}

const givenSaid = ({ telling, out, target }: Looking, giver: Giver): Part => {
  const { nouns, deduction, board } = telling;
  const isPointing = nouns.style === "pointing";
  if (giver === "sight") return because(isPointing ? "this one sees it" : "it is seen from there");
  const { id, isFull } = giver;
  const isHouse = board.house(id) !== undefined;
  const name = isHouse ? nouns.house(id) : isPointing ? nouns.rule(id) : `the ${nouns.words(id).noun}`;
  const of = isHouse ? { house: id } : { rule: id };
  const digit = deduction.places.get(target);
  const here = isPointing ? "here" : "there";
  const leaves = digit === undefined ? `no ${digitsSaid(out, "or")}` : `only ${aDigit(digit)}`;
  return because(isFull ? `${name} can't be met` : `${name} leaves ${leaves} ${here}`, of);
};

const isSame = (a: Giver, b: Giver): boolean =>
  a === b || (a !== "sight" && b !== "sight" && a.id === b.id && a.isFull === b.isFull);

/** "That one is a 2 or a 7. With the 2, this cage leaves no 9 here; with the 7, this row does. Either way there's no 9 here." */
export const eitherCase = (telling: Telling, end: Part): Part[] | undefined => {
  const taken = [...takenBy(telling)];
  const [single, another] = taken;
  if (!single || another) return undefined;
  const { board, nouns } = telling;
  const looking: Looking = { telling, target: single[0], out: single[1], ...premisesOf(telling) };
  for (const { cases, house } of eithers(looking)) {
    const [first, second] = cases.map((one) => giverIn(looking, one));
    if (first === undefined || second === undefined || (first === "sight" && second === "sight")) continue;
    const isPointing = nouns.style === "pointing";
    const of = { cells: namesOf(board, [...new Set(cases.map(({ cell }) => cell))]) };
    const whole =
      house === undefined
        ? `${isPointing ? "that one" : nouns.cell(cases[0].cell)} is ${aDigitOf(digitsOf(cases.map(({ digit }) => digit)))}`
        : `the ${cases[0].digit} of ${nouns.house(house)} is in one of ${isPointing ? "those two" : nouns.cells(cases.map(({ cell }) => cell))}`;
    const [one, other] =
      house === undefined ? cases.map(({ digit }) => `with the ${digit}`) : ["in the first", "in the second"];
    if (isSame(first, second)) {
      const given = sentence(house === undefined ? "with either, " : "in either, ", givenSaid(looking, first));
      return sentences(sentence(because(whole, of)), given, sentence("so ", end));
    }
    const told = sentence(`${one}, `, givenSaid(looking, first), `; ${other}, `, givenSaid(looking, second));
    return sentences(sentence(because(whole, of)), told, sentence("either way ", end));
  }
  return undefined;
};
