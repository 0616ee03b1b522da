import type { House } from "../../../board/board.ts";
import { both, count, type Digits, digitsOf, either, listOf, none, without } from "../../../board/digits.ts";
import { at, isSettled } from "../../../board/knowledge.ts";
import { combinations } from "../../../deduce/combinations.ts";
import { placesIn } from "../../../deduce/techniques/only-place.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import { type Part, wordsIn } from "../../line.ts";
import { aDigit, aDigitOf, counted, digitsSaid, listed, listedApart } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { concluded, sentence } from "../sentence.ts";

const goneIn = ({ deduction }: Telling): Digits => [...deduction.removes.values()].reduce<Digits>(either, none);
const targets = ({ deduction }: Telling): Cell[] => [...deduction.removes.keys()];
const noneOf = (digits: Digits): string => `no ${digitsSaid(digits, "or")}`;

/** What an open cell has left after this step. */
export const leftIn = ({ before, deduction }: Telling, cell: Cell): Digits =>
  without(at(before, cell), deduction.removes.get(cell) ?? none);

interface Group {
  readonly cells: readonly Cell[];
  readonly digits: Digits;
}

/** Cells that can be said to have none of the same digits: all of them where that is true of all, else those that lose the same. */
const groupsOf = (telling: Telling): readonly Group[] => {
  const gone = goneIn(telling);
  const cells = targets(telling);
  if (cells.every((cell) => both(leftIn(telling, cell), gone) === none)) return [{ cells, digits: gone }];
  const lost = [...telling.deduction.removes];
  return [...new Set(lost.map(([, digits]) => digits))].map((digits) => ({
    cells: lost.filter(([, other]) => other === digits).map(([cell]) => cell),
    digits,
  }));
};

const inCells = ({ nouns }: Telling, cells: readonly Cell[]): string => {
  if (nouns.style === "placed") return `in ${nouns.cells(cells)}`;
  return cells.length === 1 ? "here" : `in these ${counted(cells.length)}`;
};

/** More sorts of losses than this are left to the drawing, where there is one. */
const mostGroups = 3;
/** So that the sentence with them stays short enough. */
const mostWordsOfGroups = 17;

/** "no 3 here", "no 3 in these two and no 5 here"; where it is read, every one, set apart since places have commas. */
const noneLeft = (telling: Telling): string | undefined => {
  const groups = groupsOf(telling);
  const each = groups.map(({ cells, digits }) => `${noneOf(digits)} ${inCells(telling, cells)}`);
  if (telling.nouns.style === "placed") return listedApart(each);
  const said = listed(each);
  return groups.length > mostGroups || (groups.length > 1 && wordsIn(said) > mostWordsOfGroups) ? undefined : said;
};

/** The plainest way to say what a removal gives: what is left where that is short, else what is gone. */
export const outcome = (telling: Telling): Part => {
  const cells = targets(telling);
  const { nouns, board } = telling;
  const names = { cells: namesOf(board, cells) };
  const lefts = new Set(cells.map((cell) => leftIn(telling, cell)));
  const [left] = lefts;
  const gone = goneIn(telling);
  const place =
    nouns.style === "pointing" ? (cells.length === 1 ? "this" : `these ${counted(cells.length)}`) : nouns.cells(cells);
  const isNamed = cells.length > 1 && isSameSet(cells, setCells(telling));
  if (lefts.size === 1 && count(left!) <= 3 && count(gone) > 1)
    return so(`${isNamed ? "they" : place} can only be ${digitsSaid(left!, "or")}`, names);
  const without = noneLeft(telling);
  return without === undefined
    ? so(`some digits go from ${nouns.style === "pointing" ? place : nouns.cells(cells)}`, names)
    : so(`there's ${without}`, names);
};

/** The same as what a clue does by itself: "leaves 1 or 2 for these two", "has no room for a 5 or a 6 here". */
export const thatLeaves = (telling: Telling): Part => {
  const cells = targets(telling);
  const { nouns, board } = telling;
  const names = { cells: namesOf(board, cells) };
  const lefts = new Set(cells.map((cell) => leftIn(telling, cell)));
  const [left] = lefts;
  const own = telling.deduction.because.rules.some((id) => isSameSet(board.rule(id)!.cells, cells));
  const many =
    nouns.style === "pointing"
      ? `these ${counted(cells.length)}`
      : own
        ? `its ${counted(cells.length)} cells`
        : nouns.cells(cells);
  if (lefts.size === 1 && count(left!) <= 3)
    return so(
      cells.length === 1
        ? `leaves ${digitsSaid(left!, "or")} ${nouns.here(cells[0]!)}`
        : `leaves ${digitsSaid(left!)} for ${many}`,
      names,
    );
  const groups = groupsOf(telling);
  const [group] = groups as [Group];
  if (groups.length === 1)
    return so(
      `has no room for ${aDigitOf(group.digits)} ${cells.length === 1 ? nouns.here(cells[0]!) : `in ${many}`}`,
      names,
    );
  const said = noneLeft(telling);
  return so(said === undefined ? `takes some digits from ${many}` : `leaves ${said}`, names);
};

const isSameSet = (a: readonly Cell[], b: readonly Cell[]): boolean =>
  a.length === b.length && a.every((cell) => b.includes(cell));

const setCells = ({ deduction, before }: Telling): Cell[] =>
  [...deduction.because.facts.keys()].filter((cell) => !isSettled(before, cell));

export const nakedSet: Phrase = (telling) => {
  const { nouns, deduction, board } = telling;
  const cells = setCells(telling);
  const digits = cells.reduce<Digits>((all, cell) => either(all, deduction.because.facts.get(cell)!), none);
  const [house] = deduction.because.houses;
  const [rule] = deduction.because.rules;
  const where = house ? nouns.house(house) : nouns.rule(rule!);
  const gone = goneIn(telling);
  const fill = `${digitsSaid(digits)} fill ${nouns.cells(cells)}`;
  // A total takes more from the rest of its cells than what is filled in already.
  if (!house && without(gone, digits) !== none)
    return concluded([because(`${fill} in ${where}`, { rule: rule! })], undefined, outcome(telling));
  return sentence(
    because(fill, { cells: namesOf(board, cells) }),
    ", so ",
    so(
      gone === digits ? `they're nowhere else in ${where}` : `${where} has no other ${digitsSaid(gone, "or")}`,
      house ? { house } : { rule: rule! },
    ),
  );
};

/** The digits of the house that have just as many places as there are of them, the targets among these places. */
const hiddenIn = ({ before }: Telling, house: House, cells: readonly Cell[]) => {
  const open = listOf(house.digits).filter((digit) => placesIn(house, digit, before).length > 1);
  for (const size of [2, 3])
    for (const digits of combinations(open, size)) {
      const places = [...new Set(digits.flatMap((digit) => placesIn(house, digit, before)))];
      if (places.length === size && cells.every((cell) => places.includes(cell)))
        return { digits: digitsOf(digits), places };
    }
  return undefined;
};

export const hiddenSet: Phrase = (telling) => {
  const { nouns, deduction, board } = telling;
  const cells = targets(telling);
  const inHouse = deduction.because.houses
    .map((id) => board.house(id)!)
    .filter((house) => cells.every((cell) => house.cells.includes(cell)));
  const [house, set] =
    inHouse.map((house) => [house, hiddenIn(telling, house, cells)] as const).find(([, set]) => set) ?? [];
  if (!house || !set)
    return sentence(because("however we fill what is left", { cells: namesOf(board, cells) }), ", ", outcome(telling));
  const where = `${digitsSaid(set.digits)} only in ${nouns.cells(set.places)}`;
  const there = cells.length === set.places.length ? "there" : nouns.here(cells[0]!);
  return sentence(
    because(`${nouns.house(house.id)} has room for ${where}`, { house: house.id }),
    ", so ",
    so(`nothing else fits ${there}`, { cells: namesOf(board, cells) }),
  );
};

/** "the top row", "these two cells": where in the house the digit is kept. */
export const locked: Phrase = (telling) => {
  const { nouns, deduction, board, before } = telling;
  const cells = targets(telling);
  const digit = listOf(goneIn(telling))[0]!;
  const names = [...deduction.because.houses.filter((id) => board.house(id)!.complete)];
  const into = names.find((id) => cells.every((cell) => board.house(id)!.cells.includes(cell)));
  const rule = into
    ? undefined
    : deduction.because.rules.find((id) => cells.every((cell) => board.rule(id)!.cells.includes(cell)));
  const shared = into ? board.house(into)!.cells : (board.rule(rule!)?.cells ?? []);
  const isFrom = (id: string): boolean =>
    id !== into &&
    board.house(id)!.cells.every((cell) => shared.includes(cell) || !both(at(before, cell), (1 << digit) as Digits));
  const from = names.find(isFrom) ?? names.find((id) => id !== into)!;
  const rest = into ? `the rest of ${nouns.house(into)}` : `the rest of ${nouns.rule(rule!)}`;
  const pointed = `the rest of that ${into ? nouns.sort(into) : nouns.words(rule!).noun}`;
  const isAlike = into !== undefined && nouns.style === "pointing" && nouns.sort(from) === nouns.sort(into);
  const keeper = isAlike ? `that other ${nouns.sort(into)}` : into ? nouns.house(into) : nouns.rule(rule!);
  return sentence(
    because(`${nouns.house(from)} keeps its ${digit} in ${keeper}`, { house: from }),
    ", so ",
    so(`${nouns.style === "pointing" ? pointed : rest} has none`, { cells: namesOf(board, cells) }),
  );
};

/** What is plain to see: the digit stands where this cell sees it. */
export const visibleBlock: Phrase = (telling) => {
  const { nouns, deduction, board } = telling;
  const [cell] = targets(telling);
  const [[from]] = [...deduction.because.facts] as [[Cell, Digits]];
  const digit = listOf(goneIn(telling))[0]!;
  const [house] = deduction.because.houses;
  const share = house ? nouns.house(house) : nouns.rule(deduction.because.rules[0]!);
  return sentence(
    because(`${share} has its ${digit} ${nouns.style === "pointing" ? "here" : `in ${nouns.cell(from)}`}`, {
      cells: namesOf(board, [from]),
    }),
    ", so ",
    so(`there's no ${digit} ${nouns.here(cell!)}`, { cells: namesOf(board, [cell!]) }),
  );
};

export const seenEverywhere: Phrase = (telling) => {
  const { nouns, deduction, board, before } = telling;
  const [cell] = targets(telling);
  const digit = listOf(goneIn(telling))[0]!;
  const isFull = (id: string): boolean => !board.house(id)!.cells.includes(cell!) && board.house(id)!.complete;
  const house = deduction.because.houses.find(isFull)!;
  const places = board.house(house)!.cells.filter((place) => both(at(before, place), (1 << digit) as Digits));
  return sentence(
    because(`wherever ${nouns.house(house)} puts its ${digit}`, { cells: namesOf(board, places) }),
    nouns.style === "placed" ? ` (${nouns.cells(places)})` : "",
    nouns.style === "pointing" ? ", this cell sees it, " : `, ${nouns.cell(cell!)} sees it, `,
    so(nouns.style === "pointing" ? `so no ${digit} here` : `so it isn't ${aDigit(digit)}`, {
      cells: namesOf(board, [cell!]),
    }),
  );
};

export const smallerGridLeaves: Phrase = (telling) => {
  const { nouns, deduction, board } = telling;
  const house = board.house(deduction.because.houses[0]!)!;
  const rest = targets(telling);
  const gone = goneIn(telling);
  const isInside = (cell: Cell): boolean =>
    !rest.includes(cell) &&
    (board.domains[cell]! & gone) !== 0 &&
    both(board.domains[cell]!, house.digits) !== house.digits;
  const inside = house.cells.filter(isInside);
  const taken = inside.reduce<Digits>((all, cell) => either(all, both(board.domains[cell]!, house.digits)), none);
  const grid = board.puzzle.grids.find(
    (_, index) => index !== house.grid && inside.every((cell) => board.canvas.grids[cell]!.includes(index)),
  );
  const others = house.cells.filter((cell) => !inside.includes(cell));
  const left = without(house.digits, taken);
  return sentence(
    because(`${counted(inside.length)} cells of ${nouns.house(house.id)} lie in ${grid?.called ?? "a smaller grid"}`, {
      cells: namesOf(board, inside),
    }),
    ` and use up ${digitsSaid(taken)}. That leaves `,
    so(
      `${digitsSaid(left)} for ${nouns.style === "pointing" ? `the other ${counted(others.length)}` : nouns.cells(others)}`,
      { cells: namesOf(board, rest) },
    ),
  );
};
