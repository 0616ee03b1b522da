import type { Cell } from "../puzzle/canvas.ts";
import type { RuleEntry } from "../puzzle/puzzle.ts";
import type { Verdict } from "./verdict.ts";

/** A small change of the file that makes something better of a puzzle with several solutions or none. */
export interface Mend {
  readonly change: "add" | "remove";
  readonly givens: ReadonlyMap<Cell, number>;
  readonly rules: readonly RuleEntry[];
  /** Of the changed puzzle. */
  readonly verdict: Verdict;
}

/** Nodes after which a change is taken to help nothing. */
export const mostNodesATrial = 20_000;

/** How many mends are looked for. */
export const mostMends = 6;
