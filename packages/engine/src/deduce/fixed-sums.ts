import type { RuleInstance } from "../board/board.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** Cells with a fixed sum, by the clue that says so. */
export interface FixedSum {
  readonly rule: string;
  readonly cells: readonly Cell[];
  readonly sum: number;
}

/** The sums that a clue fixes, each cell counted once. */
export const fixedSumsOf = ({ id, kind, instance }: RuleInstance): FixedSum[] =>
  kind
    .terms(instance)
    .flatMap((term) =>
      term.term === "sum" && !term.weights ? [{ rule: id, cells: term.cells, sum: term.equals }] : [],
    );
