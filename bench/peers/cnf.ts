import { type Board, listOf } from "@solvewright/engine";
import type { Scope } from "../../packages/engine/src/rules/contract.ts";
import { modelOf } from "../../packages/engine/src/search/model.ts";
import type { State } from "../../packages/engine/src/terms/term.ts";

/** Clauses whose variables are "this cell holds this digit", and states of readings above those. */
export interface Cnf {
  readonly variables: number;
  readonly clauses: readonly (readonly number[])[];
  /** The variables that say which digit a cell holds, by cell and digit. */
  readonly of: readonly ReadonlyMap<number, number>[];
}

type Holds = Extract<Scope, { readonly holds: unknown }>;
type Reading = Extract<Scope, { readonly start: State }>;

/** Clauses in the making. */
interface Making {
  readonly of: readonly ReadonlyMap<number, number>[];
  readonly say: (clause: readonly number[]) => void;
  readonly fresh: () => number;
}

const apart = (variables: readonly number[], { say }: Making): void =>
  variables.forEach((a, k) => {
    for (const b of variables.slice(k + 1)) say([-a, -b]);
  });

/** No digit twice; each somewhere, where there are as many cells as digits. */
const sayDifferent = (cells: readonly number[], digits: readonly number[], making: Making): void => {
  for (const digit of digits) {
    const places = cells.flatMap((cell) => making.of[cell]!.get(digit) ?? []);
    apart(places, making);
    if (digits.length === cells.length) making.say(places);
  }
};

const rowsOf = (cells: readonly number[], { of }: Making): number[][] =>
  cells.reduce<number[][]>(
    (rows, cell) => rows.flatMap((row) => [...of[cell]!.keys()].map((digit) => [...row, digit])),
    [[]],
  );

const sayHolds = ({ cells, holds }: Holds, making: Making): void => {
  for (const row of rowsOf(cells, making))
    if (!holds(row)) making.say(row.map((digit, k) => -making.of[cells[k]!]!.get(digit)!));
};

/** The state before follows too, as far as the digit tells it: so what is impossible is seen from both ends. */
const sayBackwards = (
  came: ReadonlyMap<number, ReadonlyMap<number, readonly number[]>>,
  held: Iterable<number>,
  making: Making,
): void => {
  for (const [to, byDigit] of came) for (const digit of held) making.say([-to, -digit, ...(byDigit.get(digit) ?? [])]);
};

/** A state follows from the state before and the digit read, so every solution has one set of states. */
const sayReading = ({ cells, start, next, ok }: Reading, making: Making): void => {
  let layer = new Map<State, number>([[start, making.fresh()]]);
  making.say([...layer.values()]);
  for (const [index, cell] of cells.entries()) {
    const after = new Map<State, number>();
    const came = new Map<number, Map<number, number[]>>();
    for (const [state, from] of layer)
      for (const [digit, held] of making.of[cell]!) {
        const to = next(state, digit, index);
        const isDead = to === undefined || (index === cells.length - 1 && !ok(to));
        if (!isDead && !after.has(to)) after.set(to, making.fresh());
        making.say(isDead ? [-from, -held] : [-from, -held, after.get(to)!]);
        if (isDead) continue;
        const byDigit = came.get(after.get(to)!) ?? new Map<number, number[]>();
        came.set(after.get(to)!, byDigit.set(held, [...(byDigit.get(held) ?? []), from]));
      }
    apart([...after.values()], making);
    sayBackwards(came, making.of[cell]!.values(), making);
    layer = after;
  }
};

/** The board from its plain definition. */
export const cnfOf = (board: Board): Cnf => {
  const { domains } = modelOf(board);
  const clauses: (readonly number[])[] = [];
  let variables = 0;
  const fresh = (): number => ++variables;
  const digitsIn = (cell: number): number[] => listOf(domains[cell] as never);
  const of = [...domains.keys()].map((cell) => new Map(digitsIn(cell).map((digit) => [digit, fresh()])));
  const making: Making = { of, fresh, say: (clause) => clauses.push(clause) };
  for (const held of of) {
    making.say([...held.values()]);
    apart([...held.values()], making);
  }
  for (const { cells, digits } of board.houses) sayDifferent(cells, listOf(digits), making);
  for (const scope of board.rules.flatMap(({ scopes }) => scopes))
    if ("different" in scope) {
      const held = new Set(scope.cells.flatMap((cell) => listOf(board.domains[cell]!)));
      sayDifferent(scope.cells, scope.digits === undefined ? [...held] : listOf(scope.digits), making);
    } else if ("holds" in scope) sayHolds(scope, making);
    else sayReading(scope, making);
  return { variables, clauses, of };
};

/** In the DIMACS format. */
export const dimacs = ({ variables, clauses }: Cnf): string =>
  [`p cnf ${variables} ${clauses.length}`, ...clauses.map((clause) => `${clause.join(" ")} 0`), ""].join("\n");
