import type { Board, RuleInstance } from "../board/board.ts";
import type { Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { type Cases, casesOf } from "./cases.ts";

/** A clue looked at by itself: its cells, the houses that several of them share, and its cases with and without those. */
export interface ClueUnit {
  readonly rule: string;
  readonly cells: readonly Cell[];
  /** Houses with two or more of the cells that the rule itself does not keep apart. */
  readonly houses: readonly string[];
  readonly alone: Cases;
  readonly inHouses: Cases;
}

const cellsOf = (terms: readonly Term[]): Cell[] => [...new Set(terms.flatMap((term) => term.cells))].sort((a, b) => a - b);

/** What each house keeps apart among these cells: a term a house with two or more of them. */
const apartInHouses = (board: Board, cells: readonly Cell[]): (Term & { readonly owner: string })[] =>
  board.houses.flatMap((house) => {
    const shared = house.cells.filter((cell) => cells.includes(cell));
    if (shared.length < 2) return [];
    const whole = house.complete && shared.length === house.cells.length;
    return [{ term: "different", owner: house.id, cells: shared, ...(whole ? { digits: house.digits } : {}) } as const];
  });

const isKeptApart = (cells: readonly Cell[], terms: readonly Term[]): boolean =>
  terms.some((term) => term.term === "different" && cells.every((cell) => term.cells.includes(cell)));

const unitOf = (board: Board, rule: string, terms: readonly Term[]): ClueUnit => {
  const cells = cellsOf(terms);
  const apart = apartInHouses(board, cells).filter((term) => !isKeptApart(term.cells, terms));
  return {
    rule,
    cells,
    houses: apart.map(({ owner }) => owner),
    alone: casesOf(cells, terms),
    inHouses: casesOf(cells, [...terms, ...apart]),
  };
};

const unitsOfRule = (board: Board, { id, kind, instance, wholeGrid, leftOut }: RuleInstance): ClueUnit[] => {
  if (leftOut) return [];
  const terms = kind.terms(instance);
  if (!wholeGrid) return terms.length > 0 ? [unitOf(board, id, terms)] : [];
  return terms.filter(({ term }) => term !== "different").map((term) => unitOf(board, id, [term]));
};

const made = new WeakMap<Board, readonly ClueUnit[]>();

/** The clues of the board one by one; a whole-grid rule is as many clues as it has terms. */
export const clueUnits = (board: Board): readonly ClueUnit[] => {
  let units = made.get(board);
  if (!units) {
    units = board.rules.flatMap((rule) => unitsOfRule(board, rule));
    made.set(board, units);
  }
  return units;
};

/** The domains of a unit's cells, as the grids alone give them. */
export const domainsOfUnit = (board: Board, { cells }: ClueUnit): Digits[] => cells.map((cell) => board.domains[cell]!);
