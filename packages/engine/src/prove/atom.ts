import type { Claim, Relation, SpotFact } from "../deduce/step.ts";
import type { Constraint, Domains } from "./constraint.ts";
import { cellsOfRelation, nameOfRelation, nameOfSpot } from "./form.ts";
import { obeysScope } from "./obeys.ts";
import { bitsOf, cellsNamed } from "./premises.ts";
import type { Prepared } from "./prepared.ts";
import type { Problem } from "./problem.ts";
import { meaningOf, preparedRelation } from "./relation.ts";
import type { Values } from "./session.ts";

/** One thing that a claim says, and its opposite to search for. */
export interface Atom {
  readonly name: string;
  isMet(values: Values): boolean;
  /** Narrows to the opposite. */
  deny(domains: Domains): boolean;
  /** The opposite, where narrowing can't say it. */
  readonly denial?: readonly Constraint[];
}

const placed = (name: string, digit: number, { cellOf }: Prepared): Atom => {
  const cell = cellOf.get(name)!;
  return { name, isMet: (values) => values[cell] === digit, deny: ({ keep }) => keep(cell, ~(1 << digit)) };
};

const removed = (name: string, digits: readonly number[], { cellOf }: Prepared): Atom => {
  const cell = cellOf.get(name)!;
  return { name, isMet: (values) => !digits.includes(values[cell]!), deny: ({ keep }) => keep(cell, bitsOf(digits)) };
};

const spotted = (spot: SpotFact, prepared: Prepared): Atom => {
  const cells = cellsNamed(spot.cells, prepared);
  return {
    name: nameOfSpot(spot),
    isMet: (values) => cells.some((cell) => values[cell] === spot.digit),
    deny: ({ keep }) => cells.every((cell) => keep(cell, ~(1 << spot.digit))),
  };
};

const related = (relation: Relation, prepared: Prepared, problem: Problem): Atom => {
  const cells = cellsNamed(cellsOfRelation(relation), prepared);
  const meaning = meaningOf(relation, cells);
  return {
    name: nameOfRelation(relation),
    isMet: (values) => obeysScope(meaning, values, prepared.definition.domains),
    deny: () => true,
    denial: problem.constraintsOf(preparedRelation(relation, cells, problem.start, true)),
  };
};

/** Everything that a claim says, cell by cell. */
export const atomsOf = (claim: Claim, prepared: Prepared, problem: Problem): Atom[] => [
  ...Object.entries(claim.places).map(([name, digit]) => placed(name, digit, prepared)),
  ...Object.entries(claim.removes).flatMap(([name, digits]) =>
    digits.length > 0 ? removed(name, digits, prepared) : [],
  ),
  ...claim.spots.map((spot) => spotted(spot, prepared)),
  ...claim.relates.map((relation) => related(relation, prepared, problem)),
];
