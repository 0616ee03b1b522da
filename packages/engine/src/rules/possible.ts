import { listOf } from "../board/digits.ts";
import type { State } from "../terms/term.ts";
import type { Scope, Setting } from "./contract.ts";

type Reading = Extract<Scope, { start: State }>;
type Test = Extract<Scope, { holds: unknown }>;

const canRead = ({ cells, start, next, ok }: Reading, digitsAt: (index: number) => readonly number[]): boolean => {
  let states = new Set<State>([start]);
  cells.forEach((_, index) => {
    const further = new Set<State>();
    for (const state of states)
      for (const digit of digitsAt(index)) {
        const reached = next(state, digit, index);
        if (reached !== undefined) further.add(reached);
      }
    states = further;
  });
  return [...states].some(ok);
};

const canHold = (
  { cells, holds }: Test,
  digitsAt: (index: number) => readonly number[],
  row: number[] = [],
): boolean =>
  row.length === cells.length
    ? holds(row)
    : digitsAt(row.length).some((digit) => canHold({ cells, holds }, digitsAt, [...row, digit]));

/** Whether some digits of its cells obey this scope by itself, houses and other rules left aside. */
export const isPossible = (scope: Reading | Test, { domains }: Pick<Setting, "domains">): boolean => {
  const digitsAt = (index: number): readonly number[] => listOf(domains[scope.cells[index]!]!);
  return "holds" in scope ? canHold(scope, digitsAt) : canRead(scope, digitsAt);
};
