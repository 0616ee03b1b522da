import type { Digits } from "../board/digits.ts";
import type { Deduction, Spot } from "../deduce/deduction.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** Marks that are written once a beat is over: every digit (or place) that is still possible then. */
export interface Writes {
  readonly cells: ReadonlyMap<Cell, Digits>;
  readonly spots: readonly Spot[];
}

/** A step in its place; `recalls` are indices (from 0) of earlier steps whose reason the line says again. */
export interface OrderedStep {
  readonly deduction: Deduction;
  readonly recalls: readonly number[];
}

/** What is said in one breath. */
export interface OrderedBeat {
  readonly steps: readonly OrderedStep[];
  readonly writes: Writes;
}

export const noWrites: Writes = { cells: new Map(), spots: [] };
