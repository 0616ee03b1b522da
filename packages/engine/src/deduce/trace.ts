import type { Board } from "../board/board.ts";
import { type Digits, either, has, listOf, none, only, without } from "../board/digits.ts";
import { isSettled, type Knowledge } from "../board/knowledge.ts";
import { keyOfRelated, type Related } from "../board/related.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction } from "./deduction.ts";
import type { Judge } from "./judge.ts";
import { techniques } from "./registry.ts";
import { shrink, widened } from "./shrink.ts";

/** What has been found since some state, in order, and who removed or placed what. */
export interface Trail {
  readonly found: readonly Deduction[];
  /** The place in `found` of the first that took the digit out of the cell. */
  removedBy(cell: Cell, digit: number): number | undefined;
  placedBy(cell: Cell): number | undefined;
  relatedBy(related: Related): number | undefined;
  add(deduction: Deduction, before: Knowledge): void;
  /** A copy that can be added to by itself. */
  copy(): Trail;
}

export const trailOf = (
  found: Deduction[] = [],
  removed: Map<number, number> = new Map(),
  placed: Map<Cell, number> = new Map(),
  related: Map<string, number> = new Map(),
): Trail => {
  return {
    found,
    removedBy: (cell, digit) => removed.get(cell * 32 + digit),
    placedBy: (cell) => placed.get(cell),
    relatedBy: (relation) => related.get(keyOfRelated(relation)),
    add: (deduction, before) => {
      for (const [cell, digits] of deduction.removes)
        for (const digit of listOf(digits))
          if (has(before.possible[cell]!, digit) && !removed.has(cell * 32 + digit))
            removed.set(cell * 32 + digit, found.length);
      for (const [cell] of deduction.places) if (!placed.has(cell)) placed.set(cell, found.length);
      for (const relation of deduction.relates)
        if (!related.has(keyOfRelated(relation))) related.set(keyOfRelated(relation), found.length);
      found.push(deduction);
    },
    copy: () => trailOf([...found], new Map(removed), new Map(placed), new Map(related)),
  };
};

/** Digits of a cell that sight alone does not account for, so that they have to be remembered or marked. */
export const isWorkedOut =
  (knowledge: Knowledge, board: Board) =>
  (cell: Cell, digit: number): boolean =>
    !board.sees[cell]!.some((other) => isSettled(knowledge, other) && has(knowledge.possible[other]!, digit));

/** The deduction with only those removals that somebody needs, its reasons small; then what else follows from these. */
const smallFor = (
  deduction: Deduction,
  needed: ReadonlyMap<Cell, Digits> | undefined,
  knowledge: Knowledge,
  board: Board,
  judge: Judge,
): Deduction | undefined => {
  const asked = needed && deduction.removes.size > 0 ? { ...deduction, removes: needed } : deduction;
  const small = shrink(asked, board, judge.holds);
  if (!small) return undefined;
  const wider = widened(small, knowledge, board, isWorkedOut(knowledge, board), judge.holds);
  const wide = fits(wider, board) ? wider : wellNamed(small, board, judge);
  const all = wide && { ...wide, removes: deduction.removes };
  return all && deduction.removes.size > 0 && judge.holds(all) ? all : wide;
};

/** The same by the name of the looser pattern, where its reasons show that one. */
const loosened = (deduction: Deduction, board: Board): Deduction | undefined => {
  const technique = techniqueOf(deduction)?.looser;
  const looser = technique === undefined ? undefined : { ...deduction, technique };
  return looser && fits(looser, board) ? looser : undefined;
};

/** What small reasons show once they have lost the pattern that they were found by. */
const named = (deduction: Deduction, judge: Judge): Deduction | undefined => {
  const { counts, ...because } = deduction.because;
  const { rules, houses } = because;
  if (because.relations.length > 0) return undefined;
  const plain: Deduction = { ...deduction, because };
  const [technique, level]: [string, number] =
    rules.length + houses.length === 0
      ? ["only-digit", 1]
      : rules.length === 0
        ? ["house-cases", 3]
        : rules.length === 1 && houses.length === 0
          ? ["clue-cases", 2]
          : ["joint-cases", 3];
  return counts === undefined || judge.holds(plain) ? { ...plain, technique, level } : undefined;
};

/** By the name under which it was found, where its reasons still show that, else by one that fits them. */
export const wellNamed = (small: Deduction, board: Board, judge: Judge): Deduction | undefined =>
  fits(small, board) ? small : (loosened(small, board) ?? named(small, judge));

/**
 * A removal that leaves a cell one digit, and the step that notices it, are one thought: the digit follows at once.
 * Undefined where they can't be told as one.
 */
const fused = (steps: readonly Deduction[], board: Board, judge: Judge): Deduction[] | undefined => {
  const last = steps.at(-1)!;
  if (last.technique !== "only-digit" || steps.length < 2) return undefined;
  const [[cell, digit]] = [...last.places] as [[Cell, number]];
  const supplier = steps.at(-2)!;
  const gone = supplier.removes.get(cell);
  if (gone === undefined || !techniqueOf(supplier)?.settles) return undefined;
  const facts = new Map([...last.because.facts, ...supplier.because.facts]);
  const own = either(last.because.facts.get(cell) ?? none, gone);
  if (own === board.domains[cell]) facts.delete(cell);
  else facts.set(cell, own);
  const because = {
    ...supplier.because,
    facts,
    houses: [...new Set([...supplier.because.houses, ...last.because.houses])],
    rules: [...new Set([...supplier.because.rules, ...last.because.rules])],
  };
  const whole = shrink(
    { ...supplier, places: new Map([[cell, digit]]), removes: new Map(), because },
    board,
    judge.holds,
  );
  return whole && fits(whole, board) ? [...steps.slice(0, -2), whole] : undefined;
};

const techniqueOf = ({ technique }: Deduction) => techniques.find(({ name }) => name === technique);
const fits = (deduction: Deduction, board: Board): boolean =>
  techniqueOf(deduction)?.fits?.(deduction.because, board, deduction) ?? true;

interface Wanted {
  readonly removes: Map<Cell, Digits>;
}

/**
 * Walks back from a conclusion (the last of the trail) and keeps what it needs: each with small reasons, in the order in
 * which they were found. Undefined, and the culprit rejected, where one of them can't be proved.
 * `knowledge` is the state in which everything in the trail stands open (what it found not yet applied).
 */
export const traced = (trail: Trail, knowledge: Knowledge, board: Board, judge: Judge): Deduction[] | undefined => {
  const wanted = new Map<number, Wanted>();
  const want = (index: number | undefined): Wanted | undefined => {
    if (index === undefined) return undefined;
    const entry = wanted.get(index) ?? { removes: new Map() };
    wanted.set(index, entry);
    return entry;
  };
  const kept: Deduction[] = [];
  want(trail.found.length - 1);
  for (let index = trail.found.length - 1; index >= 0; index--) {
    const need = wanted.get(index);
    if (!need) continue;
    const deduction = trail.found[index]!;
    const isLast = index === trail.found.length - 1;
    const small = deduction.assume
      ? deduction
      : smallFor(deduction, isLast ? undefined : need.removes, knowledge, board, judge);
    if (!small) {
      judge.reject(deduction);
      return undefined;
    }
    kept.unshift(small);
    for (const related of small.because.relations) want(trail.relatedBy(related));
    for (const [cell, digits] of small.because.facts) {
      if (isSettled(knowledge, cell)) continue;
      const placed = trail.placedBy(cell);
      if (placed !== undefined && placed < index) {
        want(placed);
        continue;
      }
      for (const digit of listOf(without(board.domains[cell]!, digits))) {
        const supplier = want(trail.removedBy(cell, digit));
        supplier?.removes.set(cell, either(supplier.removes.get(cell) ?? none, only(digit)));
      }
    }
  }
  return fused(kept, board, judge) ?? kept;
};
