import type { Board } from "../board/board.ts";
import { count, type Digits, either, isEmpty, isOne, listOf, min, only, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge } from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { type Cases, casesOf } from "./cases.ts";
import type { Deduction, Reasons } from "./deduction.ts";
import { gathering, placing, removing } from "./reasons.ts";

/** Houses and clues looked at together: all cells that they bind, and all ways to meet them at once. */
export interface Unit {
  readonly rules: readonly string[];
  /** Houses that are part of the thought, and those that merely keep some of the cells apart. */
  readonly houses: readonly string[];
  readonly apart: readonly string[];
  readonly cells: readonly Cell[];
  /** Of the clues alone. */
  readonly terms: readonly Term[];
  /** Without the houses that keep cells apart. */
  readonly alone: Cases;
  readonly together: Cases;
  readonly counts?: Reasons["counts"];
}

interface Parts {
  readonly rules: readonly string[];
  readonly houses?: readonly string[];
  readonly terms: readonly Term[];
  readonly counts?: NonNullable<Reasons["counts"]>;
}

const isKeptApart = (cells: readonly Cell[], terms: readonly Term[]): boolean =>
  terms.some((term) => term.term === "different" && cells.every((cell) => term.cells.includes(cell)));

/** What each other house keeps apart among these cells: a term a house with two or more of them. */
const apartTerms = (
  board: Board,
  cells: readonly Cell[],
  terms: readonly Term[],
): (Term & { readonly owner: string })[] =>
  board.houses.flatMap((house) => {
    const shared = house.cells.filter((cell) => cells.includes(cell));
    if (shared.length < 2 || isKeptApart(shared, terms)) return [];
    const whole = house.complete && shared.length === house.cells.length;
    return [{ term: "different", owner: house.id, cells: shared, ...(whole ? { digits: house.digits } : {}) } as const];
  });

/** Prepares a unit; `houses` are complete houses whose every cell takes part. */
export const unitOf = (board: Board, { rules, houses = [], terms, counts }: Parts): Unit => {
  const whole = houses.map((id): Term => {
    const { cells, digits } = board.house(id)!;
    return { term: "different", owner: id, cells, digits };
  });
  const own = [...terms, ...whole];
  const cells = [...new Set(own.flatMap((term) => term.cells))].sort((a, b) => a - b);
  const apart = apartTerms(board, cells, own);
  return {
    rules,
    houses,
    apart: apart.map(({ owner }) => owner),
    cells,
    terms,
    alone: casesOf(cells, own),
    together: casesOf(cells, [...own, ...apart]),
    ...(counts ? { counts } : {}),
  };
};

interface Outcome {
  readonly before: readonly Digits[];
  /** The tries that it was given. */
  readonly most: number | undefined;
  readonly left: readonly Digits[] | undefined;
}
/** What a unit said last, the newest first: nothing is worked out again while its cells stay as they were. */
const lastOutcomes = new WeakMap<Unit, Outcome[]>();
/** The planner goes back and forth between as many orders. */
const mostOutcomes = 8;
const isSame = (a: readonly Digits[], b: readonly Digits[]): boolean => a.every((digits, k) => digits === b[k]);

/** By place in the unit's cells: the digits of each that some way to meet it uses; undefined where there are too many ways. */
export const leftBy = (unit: Unit, knowledge: Knowledge, most?: number): readonly Digits[] | undefined => {
  const before = unit.cells.map((cell) => at(knowledge, cell));
  const last = lastOutcomes.get(unit) ?? [];
  const known = last.find((outcome) => isSame(outcome.before, before) && (outcome.left || outcome.most === most));
  if (known) return known.left;
  const left = unit.together.possible(before, most);
  lastOutcomes.set(unit, [{ before, most, left }, ...last.slice(0, mostOutcomes - 1)]);
  return left;
};

/** The unit, and whatever is known of its cells. */
export const reasonsOf = (unit: Unit, knowledge: Knowledge, board: Board): Reasons => {
  const because = gathering();
  for (const house of [...unit.apart, ...unit.houses]) because.house(house);
  for (const rule of unit.rules) because.rule(rule);
  for (const cell of unit.cells)
    if (at(knowledge, cell) !== board.domains[cell]) because.fact(cell, at(knowledge, cell));
  return { ...because.reasons, ...(unit.counts ? { counts: unit.counts } : {}) };
};

/** Whether a unit's cells, with these digits each, leave none of what is said to be gone; nothing at all, where nothing is said. */
const leavesNone = (cases: Cases, start: readonly Digits[], gone: ReadonlyMap<Cell, Digits>): boolean =>
  gone.size === 0
    ? cases.allows(start, 0, start[0]!) === false
    : [...gone].every(([cell, digits]) => cases.allows(start, cases.cells.indexOf(cell), digits) === false);

/** The unit, and of what is known of its cells no more than it takes for these digits to be gone (all, where none are named). */
export const leanReasonsOf = (
  unit: Unit,
  knowledge: Knowledge,
  board: Board,
  gone: ReadonlyMap<Cell, Digits>,
): Reasons => {
  const start = unit.cells.map((cell) => at(knowledge, cell));
  const isAlone = leavesNone(unit.alone, start, gone);
  const cases = isAlone ? unit.alone : unit.together;
  const tryWith = (k: number, digits: Digits): boolean => {
    const before = start[k]!;
    start[k] = digits;
    if (leavesNone(cases, start, gone)) return true;
    start[k] = before;
    return false;
  };
  for (const [k, cell] of unit.cells.entries()) {
    if (tryWith(k, board.domains[cell]!) || isOne(start[k]!)) continue;
    for (const digit of listOf(without(board.domains[cell]!, start[k]!))) tryWith(k, either(start[k]!, only(digit)));
  }
  const because = gathering();
  for (const house of [...(isAlone ? [] : unit.apart), ...unit.houses]) because.house(house);
  for (const rule of unit.rules) because.rule(rule);
  for (const [k, cell] of unit.cells.entries()) if (start[k] !== board.domains[cell]) because.fact(cell, start[k]!);
  return { ...because.reasons, ...(unit.counts ? { counts: unit.counts } : {}) };
};

/** Everything that the unit takes out or settles, all together and cell by cell. */
export function* deductionsOf(
  unit: Unit,
  technique: string,
  level: number,
  knowledge: Knowledge,
  board: Board,
  most?: number,
): Iterable<Deduction> {
  const left = leftBy(unit, knowledge, most);
  if (!left || left.some(isEmpty)) return;
  const removes = new Map<Cell, Digits>();
  for (const [k, cell] of unit.cells.entries()) {
    const gone = without(at(knowledge, cell), left[k]!);
    if (!isEmpty(gone) && !isSettled(knowledge, cell)) removes.set(cell, gone);
  }
  if (removes.size === 0) return;
  const because = reasonsOf(unit, knowledge, board);
  for (const cell of removes.keys()) {
    const digits = left[unit.cells.indexOf(cell)]!;
    if (isOne(digits)) yield placing(technique, level, cell, min(digits), because);
  }
  yield removing(technique, level, removes, because);
  if (removes.size > 1)
    for (const [cell, gone] of removes) yield removing(technique, level, new Map([[cell, gone]]), because);
}

/** How many ways the open cells of a unit could be filled at most, as a power of two: small ones are looked at first. */
export const openness = (unit: Unit, knowledge: Knowledge): number =>
  unit.cells.reduce((sum, cell) => sum + Math.log2(Math.max(1, count(at(knowledge, cell)))), 0);
