import type { Claim, Relation } from "../deduce/step.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { cellsOfRelation } from "./form.ts";
import { foundCounts } from "./found-counts.ts";
import { type Prepared, type PreparedHouse, type PreparedRule, type PreparedScope, preparedScope } from "./prepared.ts";
import { preparedRelation } from "./relation.ts";

export interface Spot {
  readonly digit: number;
  readonly cells: readonly Cell[];
}
/** What counts may add and subtract. */
export type Counted = PreparedHouse | PreparedRule;

/** A claim's reasons with every name looked up: what each assignment of the touched cells must obey. */
export interface Premises {
  readonly touched: readonly Cell[];
  /** By `Cell`, as bits, facts included; meaningful where it is touched. */
  readonly start: Int32Array;
  readonly houses: readonly PreparedHouse[];
  /** Of the listed rules, a whole-grid rule's cut down to the touched cells, and of the relations. */
  readonly scopes: readonly PreparedScope[];
  readonly spots: readonly Spot[];
  /** What to add and subtract, told or found; one that names what is not listed is left out. */
  readonly counts: readonly { readonly plus: readonly Counted[]; readonly minus: readonly Counted[] }[];
}

/** Digits as bits. */
export const bitsOf = (digits: readonly number[]): number => digits.reduce((set, digit) => set | (1 << digit), 0);

/** The cells with these names, which are known to be there. */
export const cellsNamed = (names: readonly string[], { cellOf }: Prepared): Cell[] =>
  names.map((name) => cellOf.get(name)!);

/** Collects cells, each once. */
const touching = (size: number) => {
  const isTouched = new Uint8Array(size);
  const touched: Cell[] = [];
  const touch = (cells: readonly Cell[]): void => {
    for (const cell of cells) {
      if (isTouched[cell]) continue;
      isTouched[cell] = 1;
      touched.push(cell);
    }
  };
  return { isTouched, touched, touch };
};

/** All cells that a claim names, its sub-steps' too. */
const touchNamed = (claim: Claim, prepared: Prepared, touch: (cells: readonly Cell[]) => void): void => {
  const { places, removes, spots, relates, because, assume, steps } = claim;
  for (const of of [places, removes, because.facts, assume ?? {}]) touch(cellsNamed(Object.keys(of), prepared));
  for (const spot of [...spots, ...because.spots]) touch(cellsNamed(spot.cells, prepared));
  for (const relation of [...relates, ...because.relations]) touch(cellsNamed(cellsOfRelation(relation), prepared));
  for (const step of steps ?? []) touchNamed(step, prepared, touch);
};

/** A scope of a whole-grid rule as far as it speaks of touched cells only. */
const cutDown = (prepared: PreparedScope, isTouched: Uint8Array, { definition }: Prepared): PreparedScope[] => {
  const { scope } = prepared;
  const cells = scope.cells.filter((cell) => isTouched[cell]);
  if (cells.length === scope.cells.length) return [prepared];
  if (!("different" in scope) || cells.length < 2) return [];
  return [preparedScope({ cells, different: true }, definition.domains)];
};

const startOf = (
  touched: readonly Cell[],
  { definition, cellOf }: Prepared,
  facts: Claim["because"]["facts"],
): Int32Array => {
  const start = new Int32Array(definition.names.length);
  for (const cell of touched) start[cell] = definition.domains[cell]!;
  for (const [name, digits] of Object.entries(facts)) start[cellOf.get(name)!]! &= bitsOf(digits);
  return start;
};

const countsOf = ({ because }: Claim, { house, rule }: Prepared): Premises["counts"] => {
  const listed = (name: string): Counted[] => {
    const counted = (because.houses.includes(name) && house(name)) || (because.rules.includes(name) && rule(name));
    return counted ? [counted] : [];
  };
  return (because.counts ?? [])
    .map(({ plus, minus }) => ({
      names: plus.length + minus.length,
      plus: plus.flatMap(listed),
      minus: minus.flatMap(listed),
    }))
    .filter(({ names, plus, minus }) => plus.length + minus.length === names);
};

/** Looks up the reasons of a claim that has no fault in its form. */
export const premisesOf = (claim: Claim, prepared: Prepared): Premises => {
  const { because } = claim;
  const houses = [...new Set(because.houses)].map((id) => prepared.house(id)!);
  const rules = [...new Set(because.rules)].map((id) => prepared.rule(id)!);
  const { isTouched, touched, touch } = touching(prepared.definition.names.length);
  touchNamed(claim, prepared, touch);
  for (const { cells } of [...houses, ...rules]) touch(cells);
  const start = startOf(touched, prepared, because.facts);
  const related = (relation: Relation): PreparedScope =>
    preparedRelation(relation, cellsNamed(cellsOfRelation(relation), prepared), start);
  return {
    touched,
    start,
    houses,
    scopes: [
      ...rules.flatMap((rule) =>
        rule.wholeGrid ? rule.prepared.flatMap((scope) => cutDown(scope, isTouched, prepared)) : rule.prepared,
      ),
      ...because.relations.map(related),
    ],
    spots: because.spots.map(({ digit, cells }) => ({ digit, cells: cellsNamed(cells, prepared) })),
    counts: [...countsOf(claim, prepared), ...foundCounts(houses, rules)],
  };
};
