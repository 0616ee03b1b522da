import type { Board, RuleInstance } from "../board/board.ts";
import type { Digits } from "../board/digits.ts";
import { remembered } from "../board/remembered.ts";
import { type Unit, unitOf } from "./unit.ts";

const unitsOfRule = (board: Board, { id, kind, instance, wholeGrid, leftOut }: RuleInstance): Unit[] => {
  if (leftOut) return [];
  const terms = kind.terms(instance);
  if (!wholeGrid) return terms.length > 0 ? [unitOf(board, { rules: [id], terms })] : [];
  return terms.filter(({ term }) => term !== "different").map((term) => unitOf(board, { rules: [id], terms: [term] }));
};

/** The clues of the board one by one; a whole-grid rule is as many clues as it has terms. */
export const clueUnits = remembered((board: Board): readonly Unit[] =>
  board.rules.flatMap((rule) => unitsOfRule(board, rule)),
);

/** The domains of a unit's cells, as the grids alone give them. */
export const domainsOfUnit = (board: Board, { cells }: Unit): Digits[] => cells.map((cell) => board.domains[cell]!);
