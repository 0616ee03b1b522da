import type { Board, House } from "../../board/board.ts";
import { type Digits, digitsOf, has, listOf, only } from "../../board/digits.ts";
import { isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { combinations } from "../combinations.ts";
import type { Deduction, Reasons, Technique } from "../deduction.ts";
import { leftByReasons } from "../left-by-reasons.ts";
import { addRemoval, gathering, removing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";
import { apartSets } from "./naked-set.ts";

type ApartSet = ReturnType<typeof apartSets>[number];

/** So many houses whose places for a digit lie in as many others: these use up the digit of the others. */
export interface Fish {
  readonly digit: number;
  readonly bases: readonly House[];
  readonly covers: readonly ApartSet[];
  readonly places: readonly Cell[];
}

/** A house with more places for the digit than this is not held in the head beside another. */
const mostPlaces = 4;

interface Base {
  readonly house: House;
  readonly places: readonly Cell[];
}

/** Every way to cover these cells with so many sets, each of which is needed. */
function* coverings(cells: readonly Cell[], size: number, sets: readonly ApartSet[]): Iterable<ApartSet[]> {
  const [first] = cells;
  if (first === undefined || size === 0) {
    if (first === undefined && size === 0) yield [];
    return;
  }
  for (const set of sets) {
    if (!set.cells.includes(first)) continue;
    const rest = cells.filter((cell) => !set.cells.includes(cell));
    for (const others of coverings(rest, size - 1, sets)) yield [set, ...others];
  }
}

const shareCells = (bases: readonly Base[]): boolean => {
  const places = bases.flatMap((base) => base.places);
  return new Set(places).size < places.length;
};

const familyOf = ({ grid, shape }: House): string => `${grid} ${shape}`;

/** Houses to look at together: any two, or three rows, three columns or three regions of one grid. */
const baseSets = (bases: readonly Base[], size: number): Iterable<readonly Base[]> => {
  if (size === 2) return combinations(bases, 2);
  const families = new Map<string, Base[]>();
  for (const base of bases) families.set(familyOf(base.house), [...(families.get(familyOf(base.house)) ?? []), base]);
  return [...families.values()].flatMap((family) => [...combinations(family, size)]);
};

/** Every fish of a digit in these houses and sets, where `left` is what each cell can be. */
function* fishOf(
  size: number,
  digit: number,
  left: readonly Digits[],
  houses: readonly House[],
  sets: readonly ApartSet[],
): Iterable<Fish> {
  const bases = houses
    .filter(({ complete, digits }) => complete && has(digits, digit))
    .map((house): Base => ({ house, places: house.cells.filter((cell) => has(left[cell]!, digit)) }))
    .filter(({ places }) => places.length >= 2 && places.length <= mostPlaces);
  for (const some of baseSets(bases, size)) {
    if (shareCells(some)) continue;
    const places = some.flatMap((base) => base.places);
    const others = sets.filter(({ link }) => !some.some(({ house }) => house.id === link.id));
    for (const covers of coverings(places, size, others)) {
      const isLocked = some.some((base) =>
        covers.some(({ cells }) => base.places.every((cell) => cells.includes(cell))),
      );
      if (!isLocked) yield { digit, bases: some.map(({ house }) => house), covers, places };
    }
  }
}

const removedBy = ({ digit, covers, places }: Fish, left: readonly Digits[]): Map<Cell, Digits> => {
  const removes = new Map<Cell, Digits>();
  for (const { cells } of covers)
    for (const cell of cells)
      if (!places.includes(cell) && has(left[cell]!, digit)) addRemoval(removes, cell, only(digit));
  return removes;
};

const reasonsFor = ({ digit, bases, covers, places }: Fish, knowledge: Knowledge, board: Board): Reasons => {
  const because = gathering();
  for (const { id } of bases) because.house(id);
  for (const { link } of covers) because.link(link);
  const others = bases.flatMap(({ cells }) => cells.filter((cell) => !places.includes(cell)));
  gatherWhyNowhere(because, knowledge, board, others, digit);
  return because.reasons;
};

const openDigits = (knowledge: Knowledge, board: Board): number[] => {
  const all = board.domains.reduce<number>((union, digits) => union | digits, 0);
  return listOf(all as Digits).filter((digit) =>
    knowledge.possible.some((digits, cell) => !isSettled(knowledge, cell) && has(digits, digit)),
  );
};

function* fish(size: number, name: string, knowledge: Knowledge, board: Board): Iterable<Deduction> {
  const left = knowledge.possible;
  const sets = apartSets(board);
  for (const digit of openDigits(knowledge, board))
    for (const found of fishOf(size, digit, left, board.houses, sets)) {
      const removes = removedBy(found, left);
      if (removes.size > 0) yield removing(name, 4, removes, reasonsFor(found, knowledge, board));
    }
}

/** The fish that reasons show by themselves, where they show one that takes these digits out. */
export const fishIn = (because: Reasons, removes: Deduction["removes"], board: Board): Fish | undefined => {
  const left = leftByReasons(because, board);
  const houses = because.houses.map((id) => board.house(id)!);
  const names = [...because.houses, ...because.rules];
  const sets = apartSets(board).filter(({ link }) => names.includes(link.id));
  const [digit] = [...removes.values()].flatMap(listOf);
  for (const size of [2, 3])
    for (const found of fishOf(size, digit!, left, houses, sets)) {
      const gone = removedBy(found, left);
      if ([...removes].every(([cell, digits]) => gone.has(cell) && digits === digitsOf([digit!]))) return found;
    }
  return undefined;
};

const ofSize = (size: number, name: string): Technique => ({
  name,
  level: 4,
  looser: "either-way",
  fits: (because, board, { removes }) => fishIn(because, removes, board) !== undefined,
  find: (knowledge, board) => fish(size, name, knowledge, board),
});

/** Two or three houses that keep a digit inside as many other houses or cages: it is nowhere else in those. */
export const xWing = ofSize(2, "x-wing");
export const swordfish = ofSize(3, "swordfish");
