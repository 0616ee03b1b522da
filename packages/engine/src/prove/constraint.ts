import type { Cell } from "../puzzle/canvas.ts";

/** The digits still possible during a search, as bits by `Cell`. */
export interface Domains {
  readonly at: Int32Array;
  /** Keeps of the cell's digits only these; false when none is left. */
  keep(cell: Cell, digits: number): boolean;
  /** Counts work beside the nodes, in transitions looked at. */
  spend(transitions: number): void;
}

/** Something that every assignment must obey. */
export interface Constraint {
  readonly cells: readonly Cell[];
  /** How dear a look is: the cheap ones come first. */
  readonly effort: 0 | 1 | 2;
  /** Narrows the domains without losing an assignment; false when it sees that none is left. Exact on settled cells. */
  narrow(domains: Domains): boolean;
}

/** A digit that must go somewhere among these cells: a place to branch on. */
export interface Places {
  readonly cells: readonly Cell[];
  /** As bits; each of them must go somewhere. */
  readonly digits: number;
}

export const isSettled = (digits: number): boolean => (digits & (digits - 1)) === 0;
/** The smallest digit of a set that is not empty. */
export const lowest = (digits: number): number => 31 - Math.clz32(digits & -digits);
