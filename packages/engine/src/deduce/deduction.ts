import type { Board } from "../board/board.ts";
import type { Digits } from "../board/digits.ts";
import type { Knowledge } from "../board/knowledge.ts";
import type { Related } from "../board/related.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** A digit lies in one of these cells, all of one house or rule instance (`house` is its id). */
export interface Spot {
  readonly digit: number;
  readonly cells: readonly Cell[];
  readonly house: string;
}

/** Why: facts are what remains in a cell; houses and rules are ids. */
export interface Reasons {
  readonly facts: ReadonlyMap<Cell, Digits>;
  readonly spots: readonly Spot[];
  readonly relations: readonly Related[];
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  readonly counts?: readonly { readonly plus: readonly string[]; readonly minus: readonly string[] }[];
}

/** What a technique has found: what it claims and why, nothing numbered, phrased or timed. */
export interface Deduction {
  readonly technique: string;
  readonly level: number;
  readonly places: ReadonlyMap<Cell, number>;
  readonly removes: ReadonlyMap<Cell, Digits>;
  readonly spots: readonly Spot[];
  readonly relates: readonly Related[];
  readonly because: Reasons;
  /** A what-if: the cell and the digit that is tried, and what follows up to the contradiction. */
  readonly assume?: readonly [Cell, number];
  readonly steps?: readonly Deduction[];
  readonly contradiction?: true;
}

/** What a deduction says, whatever its reasons are. */
export type Conclusion = Pick<Deduction, "places" | "removes" | "spots" | "relates">;

/** A way of reasoning. `find` yields every instance there is in this state; its reasons are honest, not yet small. */
export interface Technique {
  readonly name: string;
  /** What it asks of the audience, 1 to 5. */
  readonly level: number;
  find(knowledge: Knowledge, board: Board): Iterable<Deduction>;
  /** What it finds out about a cell may settle it as well as take digits out. */
  readonly settles?: true;
  /** Whether reasons that have been made small still show its pattern, so that name and line fit; always, where left out. */
  fits?(because: Reasons, board: Board, deduction: Deduction): boolean;
  /** The name of a looser pattern of the same level, which reasons that don't fit this one may still show. */
  readonly looser?: string;
}
