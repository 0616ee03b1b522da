import {
  count,
  type Digits,
  either,
  has,
  isEmpty,
  isOne,
  isWithin,
  listOf,
  none,
  only,
  without,
} from "../../../board/digits.ts";
import { type Cases, casesOf } from "../../../deduce/cases.ts";
import { combinations } from "../../../deduce/combinations.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Term } from "../../../terms/term.ts";
import type { Part } from "../../line.ts";
import { aDigit, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Telling } from "../phrase.ts";
import { concluded } from "../sentence.ts";
import { premisesOf, takenBy } from "./reasons.ts";

/** Tries for one question before it counts as not answered. */
const mostTries = 400;

/** The step's clues and what its houses keep apart of their cells: its premises but for houses as wholes. */
interface Clues {
  readonly cells: readonly Cell[];
  readonly cases: Cases;
  readonly start: readonly Digits[];
}

const cluesOf = (telling: Telling): Clues => {
  const { board, deduction } = telling;
  const { rules, houses } = deduction.because;
  const terms = rules.flatMap((id): readonly Term[] => board.rule(id)!.kind.terms(board.rule(id)!.instance));
  const cells = [...new Set(terms.flatMap((term) => term.cells))].sort((a, b) => a - b);
  const apart = houses.flatMap((id): Term[] => {
    const shared = board.house(id)!.cells.filter((cell) => cells.includes(cell));
    return shared.length < 2 ? [] : [{ term: "different", owner: id, cells: shared }];
  });
  const { known } = premisesOf(telling);
  return { cells, cases: casesOf(cells, [...terms, ...apart]), start: cells.map(known) };
};

/** What the clues leave of their cells with these changes; undefined where that is too much to go through. */
const leaving = (
  { cells, cases, start }: Clues,
  change: (digits: Digits, cell: Cell) => Digits,
): readonly Digits[] | undefined => {
  const changed = start.map((digits, k) => change(digits, cells[k]!));
  return changed.some(isEmpty) ? changed.map(() => 0 as Digits) : cases.possible(changed, mostTries);
};

/** Whether the clues must hold the digit somewhere in these cells. */
const mustHold = (clues: Clues, inside: readonly Cell[], digit: number): boolean => {
  const left = leaving(clues, (digits, cell) => (inside.includes(cell) ? without(digits, only(digit)) : digits));
  return left?.some(isEmpty) === true;
};

const clueSubject = ({ deduction }: Telling, names: string): Part =>
  because(`however we fill ${names}`, { rule: deduction.because.rules[0]! });

/** "However we fill this cage, it has an 8 in this box, so there's no 8 here." */
const holdsDigit = (telling: Telling, clues: Clues, names: string, end: Part): Part[] | undefined => {
  const { board, nouns, deduction } = telling;
  const removes = [...takenBy(telling)];
  const [digit, another] = new Set(removes.flatMap(([, digits]) => listOf(digits)));
  if (digit === undefined || another !== undefined) return undefined;
  const house = deduction.because.houses.find((id) => {
    const { cells } = board.house(id)!;
    const inside = clues.cells.filter((cell) => cells.includes(cell) && !removes.some(([target]) => target === cell));
    return removes.every(([cell]) => cells.includes(cell)) && mustHold(clues, inside, digit);
  });
  if (house === undefined) return undefined;
  const it = deduction.because.rules.length === 1 ? "it has" : "they have";
  const has = because(`${it} ${aDigit(digit)} in ${nouns.house(house)}`, { house });
  return concluded([clueSubject(telling, names), ", ", has], undefined, end);
};

/** "This row has its 6 somewhere in this sum line, so there's no 4 here": wherever it is, the clues bar what is gone. */
const digitWithin = (telling: Telling, clues: Clues, names: string, end: Part): Part[] | undefined => {
  const { board, nouns, deduction } = telling;
  const { known } = premisesOf(telling);
  const removes = [...takenBy(telling)];
  if (removes.some(([cell]) => !clues.cells.includes(cell))) return undefined;
  const barsAll = (place: Cell, digit: number): boolean => {
    const left = leaving(clues, (digits, cell) => (cell === place ? only(digit) : digits));
    return left !== undefined && removes.every(([cell, out]) => (left[clues.cells.indexOf(cell)]! & out) === 0);
  };
  for (const id of deduction.because.houses) {
    const { cells, digits, complete } = board.house(id)!;
    if (!complete) continue;
    for (const digit of listOf(digits)) {
      const places = cells.filter((cell) => has(known(cell), digit));
      if (places.length < 2 || places.some((cell) => !clues.cells.includes(cell))) continue;
      if (!places.every((place) => barsAll(place, digit))) continue;
      const somewhere = because(`the ${digit} of ${nouns.house(id)} is somewhere in ${names}`, {
        cells: namesOf(board, places),
      });
      return concluded([somewhere], undefined, end);
    }
  }
  return undefined;
};

/** "With a 4 here, this sum line leaves no place for the 6 of this row." */
const noPlaceLeft = (telling: Telling, clues: Clues, names: string): Part[] | undefined => {
  const { board, nouns, deduction } = telling;
  const { known, differ } = premisesOf(telling);
  const [[target, out], another] = [...takenBy(telling)] as [readonly [Cell, Digits], unknown];
  if (another !== undefined || !isOne(out)) return undefined;
  const [digit] = listOf(out) as [number];
  const seen = (cell: Cell, digits: Digits): Digits =>
    cell === target ? only(digit) : differ(cell, target) ? without(digits, only(digit)) : digits;
  const left = leaving(clues, (digits, cell) => seen(cell, digits));
  if (!left) return undefined;
  const at = (cell: Cell): Digits => {
    const k = clues.cells.indexOf(cell);
    return k < 0 ? seen(cell, known(cell)) : left[k]!;
  };
  const isPlural = deduction.because.rules.length > 1;
  const tried =
    nouns.style === "pointing" ? `with ${aDigit(digit)} here` : `with ${aDigit(digit)} in ${nouns.cell(target)}`;
  if (left.every(isEmpty)) return undefined;
  for (const id of deduction.because.houses) {
    const { cells, digits, complete } = board.house(id)!;
    const homeless = complete
      ? listOf(digits).find((other) => cells.every((cell) => !has(at(cell), other)))
      : undefined;
    if (homeless === undefined) continue;
    const leave = `${tried}, ${names} ${isPlural ? "leave" : "leaves"} no place for the ${homeless} of ${nouns.house(id)}`;
    const [place] = deduction.places;
    const end = so(place ? `it's ${aDigit(place[1])}` : `it isn't ${aDigit(digit)}`, {
      cells: namesOf(board, [target]),
    });
    return concluded([because(leave, { house: id })], undefined, end);
  }
  return undefined;
};

/** More cells than this are not seen to share their digits. */
const mostSharing = 4;

const unionOf = (digits: readonly Digits[]): Digits => digits.reduce<Digits>(either, none);

/** "2, 3 and 4 fill those three cells, and this one sees them": as many digits as cells that all differ, what goes among them. */
const fillingCells = (telling: Telling, end: Part): Part[] | undefined => {
  const { board, nouns, deduction } = telling;
  const { known, differ } = premisesOf(telling);
  const taken = [...takenBy(telling)];
  const targets = taken.map(([cell]) => cell);
  const out = unionOf(taken.map(([, digits]) => digits));
  const others = [...deduction.because.facts.keys()].filter((cell) => targets.every((target) => differ(cell, target)));
  const isSet = (cells: readonly Cell[]): boolean => {
    const digits = unionOf(cells.map(known));
    const apart = cells.every((cell, k) => cells.slice(k + 1).every((other) => differ(cell, other)));
    return apart && count(digits) === cells.length && isWithin(out, digits);
  };
  const sizes = Array.from({ length: mostSharing - 1 }, (_, k) => k + 2);
  const set = targets.length === 0 ? undefined : sizes.flatMap((size) => [...combinations(others, size)]).find(isSet);
  if (!set) return undefined;
  const isTogether = deduction.because.houses.some((id) =>
    [...set, ...targets].every((cell) => board.house(id)!.cells.includes(cell)),
  );
  const pointing = nouns.style === "pointing";
  const those = pointing ? `those ${counted(set.length)} cells` : nouns.cells(set);
  const one = pointing ? "this one" : nouns.cell(targets[0]!);
  const seeing = targets.length === 1 ? `, and ${one} sees them` : ", and these see them";
  const fill = `${digitsSaid(unionOf(set.map(known)))} fill ${those}${isTogether ? "" : seeing}`;
  return concluded([because(fill, { cells: namesOf(board, set) })], undefined, end);
};

/** The thought behind a house and clues taken together, where it is one that can be said. */
export const jointReason = (telling: Telling, names: readonly string[], end: Part): Part[] | undefined => {
  if (telling.deduction.because.rules.length === 0) return fillingCells(telling, end);
  if (takenBy(telling).size === 0) return undefined;
  const clues = cluesOf(telling);
  const said = listed(names);
  return (
    holdsDigit(telling, clues, said, end) ?? digitWithin(telling, clues, said, end) ?? noPlaceLeft(telling, clues, said)
  );
};
