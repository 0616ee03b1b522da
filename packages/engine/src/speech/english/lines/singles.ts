import { count, type Digits, digitsOf, has, isOne, min } from "../../../board/digits.ts";
import { isSettled } from "../../../board/knowledge.ts";
import { linksBetween } from "../../../board/links.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Part } from "../../line.ts";
import { aDigit, aDigitOf, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { sentence, sentences } from "../sentence.ts";
import { clueNames } from "./clues.ts";

const placement = ({ deduction }: Telling): readonly [Cell, number] => [...deduction.places][0]!;
const soHere = (telling: Telling, text: string): Part =>
  so(text, { cells: namesOf(telling.board, [placement(telling)[0]]) });

/** Where in its house a cell is: "in column 6" of a row. */
const within = ({ board, nouns }: Telling, cell: Cell, house: string): string => {
  const { shape, grid } = board.house(house)!;
  if (nouns.style === "pointing" || grid === undefined) return "";
  const { row, column } = board.canvas.places[cell]!;
  const sheet = board.puzzle.grids[grid]!;
  if (shape === "row") return `, in column ${column - sheet.column + 1}`;
  if (shape === "column") return `, in row ${row - sheet.row + 1}`;
  return `, in ${nouns.cell(cell)}`;
};

/** The house that the step before spoke of, where it settled a cell there. */
const isSameHouse = ({ previous, board }: Telling, house: string): boolean => {
  const [before] = previous?.places.keys() ?? [];
  return before !== undefined && previous!.because.houses.includes(house) && board.house(house)!.cells.includes(before);
};

export const lastCell: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const [house] = telling.deduction.because.houses;
  if (isSameHouse(telling, house!))
    return sentence("that leaves ", soHere(telling, `${aDigit(digit)}${within(telling, cell, house!)}`));
  if (telling.previous)
    return sentence(
      "and ",
      because(telling.nouns.house(house!), { house: house! }),
      " needs ",
      soHere(telling, `${aDigit(digit)}${within(telling, cell, house!)}`),
    );
  return sentence(
    because(telling.nouns.house(house!), { house: house! }),
    " just needs ",
    soHere(telling, `${aDigit(digit)}${within(telling, cell, house!)}`),
  );
};

interface Barriers {
  /** Houses and rules that have the digit already and cross the house. */
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  /** Open cells that are known to lack it. */
  readonly open: readonly Cell[];
  /** Cells that the grids keep below it. */
  readonly limits: readonly Cell[];
}

const barriersOf = ({ deduction, before, board }: Telling, house: string, digit: number): Barriers => {
  const facts = [...deduction.because.facts];
  const inside = board.house(house)!.cells;
  return {
    houses: deduction.because.houses.filter((id) => id !== house),
    rules: deduction.because.rules,
    open: facts.filter(([cell]) => inside.includes(cell) && !isSettled(before, cell)).map(([cell]) => cell),
    limits: inside.filter((cell) => !has(board.domains[cell]!, digit)),
  };
};

const haveOne = (telling: Telling, { houses, rules }: Barriers): Part[] => {
  const { nouns } = telling;
  const names = [...(houses.length > 0 ? [nouns.houses(houses)] : []), ...rules.map((id) => nouns.rule(id))];
  const many = houses.length + rules.length;
  const verb = many === 1 ? " has one" : " have one";
  const of = houses[0] ? { house: houses[0] } : { rule: rules[0]! };
  return many === 0 ? [] : [because(listed(names), of), { text: verb, role: "plain" }];
};

const knownOut = ({ nouns, board }: Telling, open: readonly Cell[]): Part[] => {
  const where =
    nouns.style === "placed"
      ? `in ${nouns.cells(open)}`
      : open.length === 1
        ? "in this one"
        : `in these ${counted(open.length)}`;
  return open.length === 0 ? [] : [because(`it isn't ${where}`, { cells: namesOf(board, open) })];
};

const tooSmall = ({ nouns, board }: Telling, limits: readonly Cell[]): Part[] => {
  if (limits.length === 0) return [];
  const top = board.puzzle.grids.filter((_, index) =>
    limits.every((cell) => board.canvas.grids[cell]!.includes(index)),
  );
  const grid = top.reduce((a, b) => (b.digits.length < a.digits.length ? b : a), top[0]!);
  const stop = grid ? `${limits.length === 1 ? "lies" : "lie"} in ${grid.called}` : "can't reach it";
  return [because(`${nouns.cells(limits)} ${stop}`, { cells: namesOf(board, limits) })];
};

const joined = (clauses: readonly Part[][]): Part[] => {
  const full = clauses.filter((clause) => clause.length > 0);
  return full.flatMap((clause, k): Part[] =>
    k === 0 ? clause : [{ text: k === full.length - 1 ? " and " : ", ", role: "plain" }, ...clause],
  );
};

export const onlyPlace: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const { nouns, deduction } = telling;
  const house = deduction.because.houses.find((id) => telling.board.house(id)!.cells.includes(cell))!;
  const barriers = barriersOf(telling, house, digit);
  const clauses = [
    haveOne(telling, barriers),
    knownOut(telling, barriers.open),
    tooSmall(telling, barriers.limits),
  ].filter((clause) => clause.length > 0);
  const target = soHere(telling, nouns.style === "pointing" ? "it's here" : `it is ${nouns.here(cell)}`);
  if (clauses.length > 1) {
    const [first, ...more] = clauses;
    const opening = sentence(`${digit} in `, because(nouns.house(house), { house }), ": ", first);
    return sentences(opening, sentence(joined(more), ", so ", target));
  }
  const reasons = joined(clauses);
  if (reasons.length > 0 && isSameHouse(telling, house))
    return sentence(`then the ${digit}: `, reasons, ", so ", target);
  if (reasons.length === 0)
    return sentence(`the ${digit} of `, because(nouns.house(house), { house }), " has one place left", ": ", target);
  return sentence(`${digit} in `, because(nouns.house(house), { house }), ": ", reasons, ", so ", target);
};

export const onlyPlaceByClues: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const { nouns, deduction, board } = telling;
  const house = deduction.because.houses.find(
    (id) => board.house(id)!.cells.includes(cell) && board.house(id)!.complete,
  )!;
  const rules = deduction.because.rules;
  return sentence(
    `${digit} in `,
    because(nouns.house(house), { house }),
    ": ",
    because(`${clueNames(telling, rules)} ${rules.length === 1 ? "keeps" : "keep"} it out elsewhere`, {
      rule: rules[0]!,
    }),
    ", so ",
    soHere(telling, nouns.style === "pointing" ? "it's here" : `it is ${nouns.here(cell)}`),
  );
};

/** The digits that the cell sees settled, by this step's reasons. */
const seenBy = ({ deduction, before, board }: Telling, cell: Cell): Digits =>
  digitsOf(
    [...deduction.because.facts]
      .filter(
        ([other, digits]) => isSettled(before, other) && isOne(digits) && linksBetween(board, cell, other).length > 0,
      )
      .map(([, digits]) => min(digits)),
  );

export const onlyDigit: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const { nouns, deduction } = telling;
  const own = deduction.because.facts.get(cell);
  const seen = seenBy(telling, cell);
  const name = nouns.style === "pointing" ? "this one" : nouns.cell(cell);
  const names = { cells: namesOf(telling.board, [cell]) };
  const itIs = soHere(telling, `it's ${aDigit(digit)}`);
  if (own === undefined) return sentence(because(`${name} sees ${digitsSaid(seen)}`, names), ", so ", itIs);
  if (seen === 0) return sentence(because(`${name} has only`, names), " ", soHere(telling, `${aDigit(digit)} left`));
  const left = own as Digits;
  if (count(left) > 4)
    return sentence(because(`${name} sees ${digitsSaid(seen)}`, names), ", and the rest is ruled out: ", itIs);
  return sentence(
    because(`${name} could be ${aDigitOf(left)}`, names),
    `, and it sees the ${digitsSaid(seen)}`,
    ", so ",
    itIs,
  );
};
