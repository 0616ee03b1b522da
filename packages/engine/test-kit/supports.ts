import type { Board } from "../src/board/board.ts";
import { both, count, type Digits, listOf, none, only } from "../src/board/digits.ts";
import type { Cell } from "../src/puzzle/canvas.ts";
import { modelOf } from "../src/search/model.ts";
import { narrowingOf } from "../src/search/narrowing.ts";
import { meaningOf, propagatorOf } from "../src/terms/registry.ts";
import type { Term } from "../src/terms/term.ts";
import { checkOfTerm, fillings } from "./enumerate.ts";

/** Terms with more assignments left are looked at further down the tree. */
const most = 4000;

const supportedIn = (term: Term, now: readonly Digits[]): Map<Cell, number> => {
  const found = new Map<Cell, number>(term.cells.map((cell) => [cell, 0]));
  for (const digits of fillings([...new Set(term.cells)], now, [checkOfTerm(term)]))
    for (const cell of term.cells) found.set(cell, found.get(cell)! | only(digits[cell]!));
  return found;
};

/** Differing cells are narrowed less in the search, so their propagator is called here. */
const narrowed = (term: Term, now: readonly Digits[]): Digits[] | undefined => {
  const own = [...now];
  const keep = (cell: Cell, digits: Digits): boolean => {
    own[cell] = both(own[cell]!, digits);
    return own[cell] !== none;
  };
  return propagatorOf(term)({ at: (cell) => own[cell]!, keep }) ? own : undefined;
};

/** What a `full` term leaves in this state without an assignment that has it, each as a sentence. */
const faultsAt = (term: Term, state: readonly Digits[]): string[] => {
  const now = term.term === "different" ? narrowed(term, state) : [...state];
  if (!now || term.cells.reduce((ways, cell) => ways * count(now[cell]!), 1) > most) return [];
  return [...supportedIn(term, now)].flatMap(([cell, digits]) =>
    listOf((now[cell]! & ~digits) as Digits).map(
      (digit) => `${term.owner}: ${term.term} leaves ${digit} in cell ${cell}`,
    ),
  );
};

/** Walks the search tree of the board up to so many nodes and gathers every digit that a full term should have removed. */
export const unsupported = (board: Board, nodes: number): string[] => {
  const narrowing = narrowingOf(modelOf(board));
  const terms = board.terms.filter((term) => meaningOf(term).strength === "full");
  let left = nodes;
  const walk = (holds: boolean): string[] => {
    if (!holds || left-- <= 0) return [];
    const now = Array.from(narrowing.now) as Digits[];
    const faults = terms.flatMap((term) => faultsAt(term, now));
    const open = now.findIndex((digits) => count(digits) > 1);
    if (open < 0 || faults.length > 0) return faults;
    return listOf(now[open]!).flatMap((digit) => {
      const mark = narrowing.mark();
      const below = walk(narrowing.keep(open, only(digit)) && narrowing.settle());
      narrowing.undo(mark);
      return below;
    });
  };
  return walk(narrowing.settle());
};
