import type { Board, House, RuleInstance } from "../board/board.ts";
import { remembered, rememberedTogether } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Different, Term } from "../terms/term.ts";
import { type Complete, type Layout, layoutOf } from "./layout.ts";

export type { Complete } from "./layout.ts";

/** What of a board is demanded. A house that a rule makes goes with its rule. */
export interface Demands {
  readonly houses: readonly House[];
  readonly rules: readonly RuleInstance[];
  readonly givens: ReadonlyMap<Cell, number>;
}

/** What the search works on: domains with the givens in them, complete sets, cells that differ, and all other terms. */
export interface Model {
  readonly layout: Layout;
  /** By `Cell`: the layout's, or fewer. */
  readonly domains: Int32Array;
  readonly complete: readonly Complete[];
  /** By `Cell`: the cells that may not hold its digit, ascending. */
  readonly peers: readonly (readonly Cell[])[];
  readonly terms: readonly Term[];
}

const ownHouses = remembered((houses: Board["houses"]) => houses.filter((house) => house.rule === undefined));
const toldRules = remembered((rules: Board["rules"]) => rules.filter((rule) => !rule.leftOut));

/** Boards that share houses and rules share these too, so that what follows from them is worked out once. */
export const demandsOf = ({ houses, rules, givens }: Board): Demands => ({
  houses: ownHouses(houses),
  rules: toldRules(rules),
  givens,
});

const isDifferent = (term: Term): term is Different => term.term === "different";

/** All of a model that is the same whatever is given. */
interface Frame {
  readonly layout: Layout;
  readonly terms: readonly Term[];
}

const frameOf = rememberedTogether(
  (houses: Demands["houses"], rules: Demands["rules"], all: Board["terms"], domains: Board["domains"]): Frame => {
    const owners = new Set(rules.map(({ id }) => id));
    const terms = all.filter(({ owner }) => owners.has(owner));
    const sets = [
      ...houses.map(({ cells, digits, shape, grid }) => ({ cells, digits, family: `${grid} ${shape}` })),
      ...terms.filter(isDifferent),
    ];
    return { layout: layoutOf(sets, domains), terms: terms.filter((term) => !isDifferent(term)) };
  },
);

/** The search's view of these demands on the board. */
export const modelOf = (board: Board, demands: Demands = demandsOf(board)): Model => {
  const { layout, terms } = frameOf(demands.houses, demands.rules, board.terms, board.domains);
  const domains = layout.domains.slice();
  for (const [cell, digit] of demands.givens) domains[cell]! &= 1 << digit;
  return { layout, domains, complete: layout.complete, peers: layout.peers, terms };
};
