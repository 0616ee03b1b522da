import type { Board, House } from "../board/board.ts";
import { both, count, type Digits, either, has, isEmpty, listOf, none, only, without } from "../board/digits.ts";
import { at, type Knowledge } from "../board/knowledge.ts";
import type { Link } from "../board/links.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { propagatorOf } from "../terms/registry.ts";
import type { Domains, Propagator, Term } from "../terms/term.ts";
import { clueUnits } from "./clue-units.ts";
import type { Deduction } from "./deduction.ts";
import { jointUnits } from "./joint-units.ts";
import { contradicting, gathering, placing, removing } from "./reasons.ts";
import { sumUnits } from "./sum-units.ts";
import { houseUnits } from "./techniques/house-cases.ts";
import { apartSets } from "./techniques/naked-set.ts";
import { leanReasonsOf, type Unit } from "./unit.ts";
import { gatherWhyNowhere } from "./why-not.ts";

export type Removes = ReadonlyMap<Cell, Digits>;

/** Looks at some cells whenever one of them changes, and takes out what can't be; the quick looks have low ranks. */
export interface Watcher {
  readonly cells: readonly Cell[];
  readonly rank: number;
  /** A second look at once would find nothing. */
  readonly isExact: boolean;
  readonly narrow: Propagator;
  /** That these digits are gone, from what was known when it looked: honest reasons, not yet small. */
  steps(removes: Removes, before: Knowledge, board: Board): Deduction[];
  /** That it left this one digit in the cell; absent where that takes what was known of the cell before. */
  placing?(cell: Cell, digit: number, before: Knowledge, board: Board): Deduction;
  /** That nothing was left. */
  clash(before: Knowledge, board: Board): Deduction;
}

/** What all cells of a unit agree on, in one name. */
const saying = (unit: Unit, technique: string, level: number) => ({
  steps: (removes: Removes, before: Knowledge, board: Board) => [
    removing(technique, level, removes, leanReasonsOf(unit, before, board, removes)),
  ],
  placing: (cell: Cell, digit: number, before: Knowledge, board: Board) => {
    const gone = new Map([[cell, without(board.domains[cell]!, only(digit))]]);
    return placing(technique, level, cell, digit, leanReasonsOf(unit, before, board, gone));
  },
  clash: (before: Knowledge, board: Board) => contradicting(leanReasonsOf(unit, before, board, new Map())),
});

/** Tries for one unit before it is left for a later state. */
const mostTries = 300;

const unitWatcher = (unit: Unit, rank: number, technique: string, level: number, tooOpen: number): Watcher => {
  const { cells, together } = unit;
  const narrow = ({ at, keep }: Domains): boolean => {
    const start = cells.map(at);
    let open = 0;
    for (const digits of start) open += Math.log2(count(digits));
    const left = open === 0 || open > tooOpen ? start : (together.possible(start, mostTries) ?? start);
    return cells.every((cell, k) => keep(cell, left[k]!));
  };
  return { cells, rank, isExact: true, narrow, ...saying(unit, technique, level) };
};

/** The only place for a digit in a complete house. */
const onlyPlaces = ({ id, cells, digits }: House, unit: Unit): Watcher => {
  const narrow = ({ at, keep }: Domains): boolean => {
    let once = none;
    let twice = none;
    for (const cell of cells) {
      twice = either(twice, both(once, at(cell)));
      once = either(once, at(cell));
    }
    if (!isEmpty(without(digits, once))) return false;
    const single = without(digits, twice);
    return isEmpty(single) || cells.every((cell) => isEmpty(both(at(cell), single)) || keep(cell, single));
  };
  const place = (cell: Cell, digit: number, before: Knowledge, board: Board): Deduction => {
    const because = gathering().house(id);
    const others = cells.filter((other) => other !== cell);
    gatherWhyNowhere(because, before, board, others, digit);
    return placing("only-place", 1, cell, digit, because.reasons);
  };
  const digitOf = (cell: Cell, before: Knowledge): number | undefined =>
    listOf(both(at(before, cell), digits)).find((digit) =>
      cells.every((other) => other === cell || !has(at(before, other), digit)),
    );
  return {
    cells,
    rank: 1,
    isExact: false,
    narrow,
    steps: (removes, before, board) =>
      [...removes.keys()].flatMap((cell) => place(cell, digitOf(cell, before)!, before, board)),
    placing: place,
    clash: saying(unit, "house-cases", 3).clash,
  };
};

/** All places of a digit in a house lie in another set of cells that differ: it is nowhere else there. */
const locking = (house: House, cells: readonly Cell[], link: Link): Watcher => {
  const outside = house.cells.filter((cell) => !cells.includes(cell));
  const others = cells.filter((cell) => !house.cells.includes(cell));
  const whyLocked = (digits: Digits, before: Knowledge, board: Board) => {
    const because = gathering().house(house.id).link(link);
    for (const digit of listOf(digits)) gatherWhyNowhere(because, before, board, outside, digit);
    return because;
  };
  const lockedIn = (at: (cell: Cell) => Digits): Digits =>
    outside.reduce<Digits>((digits, cell) => without(digits, at(cell)), house.digits);
  return {
    cells: outside,
    rank: 1,
    isExact: true,
    narrow: ({ at, keep }) => {
      const digits = lockedIn(at);
      return isEmpty(digits) || others.every((cell) => keep(cell, without(-1 as Digits, digits)));
    },
    steps: (removes, before, board) =>
      listOf([...removes.values()].reduce<Digits>(either, none)).map((digit) => {
        const gone = [...removes]
          .filter(([, digits]) => has(digits, digit))
          .map(([cell]) => [cell, only(digit)] as const);
        return removing("locked", 2, new Map(gone), whyLocked(only(digit), before, board).reasons);
      }),
    clash: (before, board) => {
      const digits = lockedIn((cell) => at(before, cell));
      const empty = others.find((cell) => isEmpty(without(at(before, cell), digits)))!;
      return contradicting(whyLocked(at(before, empty), before, board).fact(empty, at(before, empty)).reasons);
    },
  };
};

const lockings = (board: Board): Watcher[] =>
  board.houses
    .filter(({ complete }) => complete)
    .flatMap((house) =>
      apartSets(board)
        .filter(({ link }) => link.id !== house.id)
        .filter(({ cells }) => {
          const shared = cells.filter((cell) => house.cells.includes(cell)).length;
          return shared > 1 && shared < cells.length && shared < house.cells.length;
        })
        .map(({ cells, link }) => locking(house, cells, link)),
    );

/** What a term says by itself, before the houses that its cells share are looked at as well. */
const termWatcher = (term: Term, unit: Unit): Watcher => ({
  cells: term.cells,
  rank: 2,
  isExact: false,
  narrow: propagatorOf(term),
  ...saying(unit, "clue-cases", 2),
});

const termWatchers = (board: Board): Watcher[] =>
  clueUnits(board).flatMap((unit) =>
    unit.terms.filter(({ term }) => term !== "different").map((term) => termWatcher(term, unit)),
  );

/** What a house's cells agree on, where they can be matched to digits in several ways. */
const matching = (unit: Unit, board: Board): Watcher => {
  const { cells, digits } = board.house(unit.houses[0]!)!;
  return {
    cells,
    rank: 4,
    isExact: true,
    narrow: propagatorOf({ term: "different", owner: "", cells, digits }),
    ...saying(unit, "house-cases", 3),
  };
};

/** Everybody who looks at a board, what is quickly seen before what takes thought. */
export const watchersOf = remembered((board: Board): readonly Watcher[] => {
  const houses = houseUnits(board);
  return [
    ...houses.map((unit) => onlyPlaces(board.house(unit.houses[0]!)!, unit)),
    ...lockings(board),
    ...termWatchers(board),
    ...clueUnits(board).map((unit) => unitWatcher(unit, 3, "clue-cases", 2, 60)),
    ...sumUnits(board).map((unit) => unitWatcher(unit, 3, "sums-left", 3, 60)),
    ...houses.map((unit) => matching(unit, board)),
    ...jointUnits(board).map((unit) => unitWatcher(unit, 5, "joint-cases", 3, 24)),
  ];
});
