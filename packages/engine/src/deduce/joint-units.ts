import type { Board, House, RuleInstance } from "../board/board.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { combinations } from "./combinations.ts";
import { type Unit, unitOf } from "./unit.ts";

/** More cells than this are not held in one thought. */
const mostCells = 20;
const mostClues = 4;

interface Clue {
  readonly rule: RuleInstance;
  readonly terms: readonly Term[];
  readonly cells: readonly Cell[];
}

const cluesOf = (board: Board): Clue[] =>
  board.rules
    .filter(({ wholeGrid, leftOut }) => !wholeGrid && !leftOut)
    .map((rule) => {
      const terms = rule.kind.terms(rule.instance);
      return { rule, terms, cells: [...new Set(terms.flatMap((term) => term.cells))] };
    })
    .filter(({ terms }) => terms.length > 0);

const shared = (a: readonly Cell[], b: readonly Cell[]): number => a.filter((cell) => b.includes(cell)).length;
const sizeOf = (...sets: readonly (readonly Cell[])[]): number => new Set(sets.flat()).size;

const joined = (board: Board, clues: readonly Clue[], house?: House): Unit =>
  unitOf(board, {
    rules: clues.map(({ rule }) => rule.id),
    terms: clues.flatMap(({ terms }) => terms),
    ...(house ? { houses: [house.id] } : {}),
  });

/** A house with one clue that has two or more cells in it, and with all such clues at once. */
const inHouse = (board: Board, house: House, clues: readonly Clue[]): Unit[] => {
  const touching = clues.filter(
    ({ cells }) => shared(cells, house.cells) >= 2 && sizeOf(cells, house.cells) <= mostCells,
  );
  const single = touching.map((clue) => joined(board, [clue], house));
  const most = touching.slice(0, mostClues);
  const isMany = most.length > 1 && sizeOf(house.cells, ...most.map(({ cells }) => cells)) <= mostCells;
  return isMany ? [...single, joined(board, most, house)] : single;
};

/** Two clues that share a cell. */
const crossing = (board: Board, clues: readonly Clue[]): Unit[] =>
  [...combinations(clues, 2)]
    .filter(([a, b]) => shared(a!.cells, b!.cells) > 0 && sizeOf(a!.cells, b!.cells) <= mostCells)
    .map((pair) => joined(board, pair));

/** Houses and clues that are worth being looked at together: those that share cells. */
export const jointUnits = remembered((board: Board): readonly Unit[] => {
  const clues = cluesOf(board);
  const houses = board.houses.filter(({ complete }) => complete);
  return [...crossing(board, clues), ...houses.flatMap((house) => inHouse(board, house, clues))];
});
