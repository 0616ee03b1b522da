import type { Board, House, RuleInstance } from "../board/board.ts";
import { count, type Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Different, Term } from "../terms/term.ts";

/** What of a board is demanded. A house that a rule makes goes with its rule. */
export interface Demands {
  readonly houses: readonly House[];
  readonly rules: readonly RuleInstance[];
  readonly givens: ReadonlyMap<Cell, number>;
}

/** Cells that hold each of these digits once. */
export interface Complete {
  readonly cells: readonly Cell[];
  readonly digits: Digits;
  /** The rows, the columns or the regions of one grid have the same; no two of a family share a cell. */
  readonly family?: string;
}

/** What the search works on: domains with the givens in them, complete sets, cells that differ, and all other terms. */
export interface Model {
  /** By `Cell`. */
  readonly domains: Int32Array;
  readonly complete: readonly Complete[];
  /** By `Cell`: the cells that may not hold its digit, ascending. */
  readonly peers: readonly (readonly Cell[])[];
  readonly terms: readonly Term[];
}

export const demandsOf = ({ houses, rules, givens }: Board): Demands => ({
  houses: houses.filter((house) => house.rule === undefined),
  rules: rules.filter((rule) => !rule.leftOut),
  givens,
});

interface Unlike {
  readonly cells: readonly Cell[];
  readonly digits?: Digits | undefined;
  readonly family?: string;
}

const isDifferent = (term: Term): term is Different => term.term === "different";

const union = (cells: readonly Cell[], domains: Int32Array): Digits =>
  cells.reduce((all, cell) => all | domains[cell]!, 0) as Digits;

/** Those with as many cells as digits that they can hold, each once. */
const completeOf = (sets: readonly Unlike[], domains: Int32Array): Complete[] => {
  const found = new Map<string, Complete>();
  for (const { cells, digits = union(cells, domains), family } of sets) {
    const key = [...cells].sort((a, b) => a - b).join();
    if (count(digits) === cells.length && !found.has(key))
      found.set(key, { cells, digits, ...(family === undefined ? {} : { family }) });
  }
  return [...found.values()];
};

const peersOf = (sets: readonly Unlike[], size: number): Cell[][] => {
  const table = new Uint8Array(size * size);
  for (const { cells } of sets) for (const a of cells) for (const b of cells) if (a !== b) table[a * size + b] = 1;
  return Array.from({ length: size }, (_, a) => {
    const peers: Cell[] = [];
    for (let b = 0; b < size; b++) if (table[a * size + b]) peers.push(b);
    return peers;
  });
};

/** The search's view of these demands on the board. */
export const modelOf = (board: Board, demands: Demands = demandsOf(board)): Model => {
  const domains = Int32Array.from(board.domains);
  for (const [cell, digit] of demands.givens) domains[cell]! &= 1 << digit;
  const owners = new Set(demands.rules.map(({ id }) => id));
  const terms = board.terms.filter(({ owner }) => owners.has(owner));
  const sets: Unlike[] = [
    ...demands.houses.map(({ cells, digits, shape, grid }) => ({ cells, digits, family: `${grid} ${shape}` })),
    ...terms.filter(isDifferent),
  ];
  const complete = completeOf(sets, domains);
  for (const { cells, digits } of complete) for (const cell of cells) domains[cell]! &= digits;
  const others = terms.filter((term) => !isDifferent(term));
  return { domains, complete, peers: peersOf(sets, domains.length), terms: others };
};
