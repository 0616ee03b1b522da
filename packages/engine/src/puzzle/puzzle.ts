import type { Body } from "../rules/contract.ts";
import type { Canvas, Cell } from "./canvas.ts";

export type Consent = "own" | "granted" | "asked" | "refused" | "unknown";
/** What the setter has agreed to, one answer a use. */
export interface Consents {
  readonly show: Consent;
  readonly page: Consent;
  readonly print: Consent;
  readonly change: Consent;
}

export interface Setter {
  readonly name: string;
  readonly link?: string;
  readonly permission: Consents;
}

export interface Grid {
  readonly id: string;
  /** How it is said: "the north grid". */
  readonly called: string;
  readonly size: number;
  /** Canvas place of its top left cell, from 1. */
  readonly row: number;
  readonly column: number;
  /** Ascending; as many as `size`. */
  readonly digits: readonly number[];
  /** Rows and columns of a box, where its regions are boxes. */
  readonly box?: { readonly rows: number; readonly columns: number };
  /** The region's letter of each cell, row by row; absent where the grid has no regions. */
  readonly regions?: readonly string[];
}

/** One rule instance as the file has it: its kind and its body, cells as places. */
export interface RuleEntry {
  /** `KIND/K`, K counting that kind's instances from 1 in file order. */
  readonly id: string;
  readonly kind: string;
  readonly body: Body;
}

/**
 * A puzzle as its file says it. What `read` gives back may be faulty (a draft); what `accept` gives back is a
 * `Puzzle`: every cell lies on the canvas, every rule can be resolved, no two givens clash in a house.
 */
export interface Draft {
  readonly title: string;
  readonly setters: readonly Setter[];
  readonly wording?: string;
  readonly notes?: string;
  readonly grids: readonly Grid[];
  readonly canvas: Canvas;
  readonly givens: ReadonlyMap<Cell, number>;
  readonly rules: readonly RuleEntry[];
}

export interface Puzzle extends Draft {
  readonly accepted: true;
}

/** What is wrong in a text: where (line and column from 1), what was read there, what would be right. */
export interface Problem {
  readonly line: number;
  readonly column: number;
  readonly read: string;
  readonly right: string;
  /** The place in the file as keys and list indices (from 0): `rules/2/cage/sum`. */
  readonly path: string;
}
