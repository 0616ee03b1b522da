import type { Board, RuleInstance } from "../board/board.ts";
import { finished } from "../finished.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Long } from "./long.ts";
import { type Demands, demandsOf, modelOf } from "./model.ts";
import { narrowingOf } from "./narrowing.ts";
import { runOf, type Solution } from "./run.ts";
import { drained } from "./solve.ts";

export type Worth = "needed" | "redundant";

/** Of a board with one solution: what the solution needs, and what follows from the rest. */
export interface Worths {
  /** By id; rules that are left out have none. */
  readonly rules: ReadonlyMap<string, Worth>;
  readonly givens: ReadonlyMap<Cell, Worth>;
}

const withoutRule = (demands: Demands, rule: RuleInstance): Demands => ({
  ...demands,
  rules: demands.rules.filter((other) => other !== rule),
});
const withoutGiven = (demands: Demands, cell: Cell): Demands => ({
  ...demands,
  givens: new Map([...demands.givens].filter(([other]) => other !== cell)),
});

/** Whether these demands permit anything but the solution. A freed given would have to be another digit. */
function* permitsOther(board: Board, demands: Demands, solution: Solution, freed?: Cell): Long<boolean> {
  const model = modelOf(board, demands);
  if (freed !== undefined) model.domains[freed]! &= ~(1 << solution[freed]!);
  const { solutions } = yield* drained(runOf(narrowingOf(model)), freed === undefined ? 2 : 1);
  return solutions.some((other) => other.some((digit, cell) => digit !== solution[cell]));
}

const worthOf = (other: boolean): Worth => (other ? "needed" : "redundant");

/** Tries the board without each rule and each given in turn; `solution` is its only one. */
export function* weighing(board: Board, solution: Solution): Long<Worths> {
  const demands = demandsOf(board);
  const rules = new Map<string, Worth>();
  const givens = new Map<Cell, Worth>();
  for (const rule of demands.rules)
    rules.set(rule.id, worthOf(yield* permitsOther(board, withoutRule(demands, rule), solution)));
  for (const cell of demands.givens.keys())
    givens.set(cell, worthOf(yield* permitsOther(board, withoutGiven(demands, cell), solution, cell)));
  return { rules, givens };
}

export const worth = (board: Board, solution: Solution): Worths => finished(weighing(board, solution));
