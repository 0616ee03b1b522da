import type { Canvas, Cell } from "../puzzle/canvas.ts";
import type { Puzzle } from "../puzzle/puzzle.ts";
import type { Kind, Named, Scope } from "../rules/contract.ts";
import type { Term } from "../terms/term.ts";
import type { Digits } from "./digits.ts";

/** Cells that hold no digit twice; a complete one has as many cells as digits and holds each once. */
export interface House {
  /** `GRID/row/3`, `GRID/region/b`, `GRID/diagonal/down`, `extra-region/1`. */
  readonly id: string;
  /** In reading order of the canvas. */
  readonly cells: readonly Cell[];
  readonly digits: Digits;
  readonly complete: boolean;
  readonly shape: "row" | "column" | "region" | "other";
  /** The grid it belongs to, by index in the puzzle; absent where a rule makes it across grids. */
  readonly grid?: number;
  /** Its number (row, column) in its grid from 1, or its letter. */
  readonly label: string;
  /** The rule that makes it, where it is no row, column or region. */
  readonly rule?: string;
}

/** Cells that a rule keeps from repeating a digit without being a house: a cage, a chess move, a renban. */
export interface Group {
  readonly rule: string;
  readonly cells: readonly Cell[];
}

/** A rule of the puzzle with everything looked up. */
export interface RuleInstance {
  readonly id: string;
  readonly kind: Kind;
  /** What the kind's `resolve` gave, with the id. */
  readonly instance: Named & { readonly cells: readonly Cell[] };
  /** All cells that it binds; empty for a whole-grid rule. */
  readonly cells: readonly Cell[];
  readonly scopes: readonly Scope[];
  readonly wholeGrid: boolean;
  readonly leftOut: boolean;
}

/** A puzzle ready for search, proof and reasoning. */
export interface Board {
  readonly puzzle: Puzzle;
  readonly canvas: Canvas;
  /** By `Cell`: the digits that all its grids allow. Givens are not in here. */
  readonly domains: readonly Digits[];
  readonly givens: ReadonlyMap<Cell, number>;
  readonly houses: readonly House[];
  readonly groups: readonly Group[];
  readonly rules: readonly RuleInstance[];
  /** What the rules mean, rule by rule; the houses are not among them. */
  readonly terms: readonly Term[];
  /** By `Cell`: the cells that it sees, through a house or a group; ascending. */
  readonly sees: readonly (readonly Cell[])[];
  house(id: string): House | undefined;
  rule(id: string): RuleInstance | undefined;
}
