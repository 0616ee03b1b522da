import type { Cell } from "../puzzle/canvas.ts";
import type { Constraint, Places } from "./constraint.ts";
import { balance, leftoverOf } from "./leftover.ts";
import { linear } from "./linear.ts";
import { path, type Used, usedAt } from "./path.ts";
import type { Premises, Spot } from "./premises.ts";
import type { PreparedScope } from "./prepared.ts";
import type { Reading } from "./reading.ts";

/** What a search works on. */
export interface Problem {
  readonly cells: readonly Cell[];
  /** By `Cell`, as bits; the search's own. */
  readonly start: Int32Array;
  readonly constraints: readonly Constraint[];
  readonly places: readonly Places[];
  /** One more thing to obey, for one question. */
  constraintsOf(scope: PreparedScope): Constraint[];
}

/** The digit must stay possible somewhere among the cells, and goes to the last of them. */
const spotConstraint = ({ digit, cells }: Spot): Constraint => ({
  cells,
  effort: 0,
  narrow: ({ at, keep }) => {
    const open = cells.filter((cell) => (at[cell]! & (1 << digit)) !== 0);
    return open.length > 1 || (open.length === 1 && keep(open[0]!, 1 << digit));
  },
});

/** Finds, for cells that are read along, which of them differ from each other: those in the group that holds most of them. */
const memoryOf = (groups: readonly (readonly Cell[])[], start: Int32Array) => {
  return (cells: readonly Cell[]): Used | undefined => {
    let best: readonly Cell[] = [];
    let most = 1;
    for (const group of groups) {
      const shared = cells.reduce((count, cell) => (group.includes(cell) ? count + 1 : count), 0);
      if (shared > most) [best, most] = [group, shared];
    }
    return most > 1
      ? usedAt(
          cells.map((cell) => best.includes(cell)),
          cells,
          start,
        )
      : undefined;
  };
};

/** Cells of a group that must place its digits hold nothing else. */
const startOf = ({ start }: Premises, places: readonly Places[]): Int32Array => {
  const narrowed = start.slice();
  for (const { cells, digits } of places) for (const cell of cells) narrowed[cell]! &= digits;
  return narrowed;
};

const placesOf = ({ digit, cells }: Spot): Places => ({ cells, digits: 1 << digit });

export const problemOf = (premises: Premises): Problem => {
  const scopes = [...premises.houses.map((house) => house.prepared), ...premises.scopes];
  const groups = scopes.flatMap(({ scope }) => ("different" in scope ? [scope.cells] : []));
  const places = scopes.flatMap((scope) => scope.places ?? []);
  const start = startOf(premises, places);
  const memory = memoryOf(groups, start);
  const along = (reading: Reading): Constraint => path(reading, memory(reading.cells));
  const constraintsOf = ({ constraints, reading }: PreparedScope): Constraint[] =>
    reading ? [...constraints, along(reading)] : [...constraints];
  const left = premises.counts.flatMap((counts) => leftoverOf(counts) ?? []);
  const constraints = [
    ...scopes.flatMap(constraintsOf),
    ...premises.spots.map(spotConstraint),
    ...left.map((leftover) => along(linear(leftover, leftover.total, start))),
    ...left.flatMap((leftover) => (leftover.times ? [balance(leftover, leftover.times)] : [])),
  ];
  return {
    cells: premises.touched,
    start,
    constraints,
    places: [...places, ...premises.spots.map(placesOf)],
    constraintsOf,
  };
};
