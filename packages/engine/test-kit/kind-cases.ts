import type { Puzzle, RuleEntry } from "../src/puzzle/puzzle.ts";
import type { Random } from "./random.ts";

/** A filled board from which a random instance is drawn; rows and columns count from 1. */
export interface Filled {
  readonly size: number;
  digit(row: number, column: number): number;
}

/** A file of one grid, to be filled: the grid's keys beside its id, and its rules as they stand in the file. */
export interface DrawnBoard {
  readonly grid: string;
  readonly rules: readonly string[];
}

/** What a kind brings to the laws and the gallery, in `rules/kinds/KIND.cases.ts` as `cases`. Test only. */
export interface KindCases {
  /** Whole tiny puzzle files (at most 4x4) for the laws: usual, none, several, digits from 0, the least lengths, ... */
  readonly boards: readonly string[];
  /**
   * The value behind `kind:` in the file for a random instance that this filled board (size 4 or 6, digits 1 to size,
   * default boxes) obeys, or undefined where chance found none.
   */
  random(random: Random, board: Filled): unknown;
  /** Where few fillings of such a board obey it: a board with it, at random, on which fillings are then searched for. */
  board?(random: Random): DrawnBoard;
  /** For the gallery: a puzzle file of one grid with this rule, a filling that obeys it and one that breaks only it. */
  readonly example: { readonly puzzle: string; readonly obeys: string; readonly breaks: string };
}

/**
 * A rule for the outside oracle, in `rules/kinds/KIND.oracle.ts` as `oracle`: answer-set rules (clingo) written from the
 * rule's sentence and its file form, never from scopes or terms. `v(R,C,D)` holds when canvas cell rRcC has digit D;
 * `cell(R,C)` holds of every cell. `n` is unique in the puzzle, for names of own predicates. Test only.
 */
export type Oracle = (entry: RuleEntry, about: { readonly puzzle: Puzzle; readonly n: number }) => string;
