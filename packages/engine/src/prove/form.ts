import type { Claim, Relation, SpotFact } from "../deduce/step.ts";
import type { Prepared } from "./prepared.ts";

/** The cells that a relation is between. */
export const cellsOfRelation = (relation: Relation): readonly string[] => {
  if ("same" in relation) return relation.same;
  if ("less" in relation) return relation.less;
  return "sum" in relation ? relation.sum : relation.parity;
};

const isDigit = (digit: number): boolean => Number.isInteger(digit) && digit >= 0 && digit <= 31;

const faultInSpot = (
  { digit, cells, house }: SpotFact,
  { cellOf, house: houseOf, rule }: Prepared,
): string | undefined => {
  const home = houseOf(house) ?? rule(house);
  if (!isDigit(digit)) return `no digit ${digit}`;
  if (!home) return `no house or rule ${house}`;
  const isInside = (name: string): boolean => home.cells.length === 0 || home.cells.includes(cellOf.get(name)!);
  return cells.every(isInside) ? undefined : `spot ${digit}: not all of its cells lie in ${house}`;
};

type ByCell = Readonly<Record<string, number | readonly number[]>>;

const faultInRecord = (record: ByCell, { cellOf }: Prepared): string | undefined => {
  for (const name in record) {
    if (!cellOf.has(name)) return `no cell ${name}`;
    const digits = record[name]!;
    if (typeof digits === "number" ? !isDigit(digits) : !digits.every(isDigit))
      return `not all digits: ${digits} in ${name}`;
  }
  return undefined;
};

const faultInNames = (names: readonly string[], { cellOf }: Prepared): string | undefined => {
  const stranger = names.find((name) => !cellOf.has(name));
  return stranger === undefined ? undefined : `no cell ${stranger}`;
};

/** The first thing in a claim that this puzzle does not have, its sub-steps left aside. */
export const faultInForm = (claim: Claim, prepared: Prepared): string | undefined => {
  const { places, removes, spots, relates, because, assume = {} } = claim;
  for (const record of [places, removes, because.facts, assume]) {
    const fault = faultInRecord(record, prepared);
    if (fault !== undefined) return fault;
  }
  for (const relation of [...relates, ...because.relations]) {
    const fault = faultInNames(cellsOfRelation(relation), prepared);
    if (fault !== undefined) return fault;
  }
  for (const spot of [...spots, ...because.spots]) {
    const fault = faultInNames(spot.cells, prepared) ?? faultInSpot(spot, prepared);
    if (fault !== undefined) return fault;
  }
  const house = because.houses.find((id) => !prepared.house(id));
  if (house !== undefined) return `no house ${house}`;
  const rule = because.rules.find((id) => !prepared.rule(id));
  return rule === undefined ? undefined : `no rule ${rule}`;
};

export const nameOfSpot = ({ digit, house }: SpotFact): string => `spot ${digit} in ${house}`;
export const nameOfRelation = (relation: Relation): string => {
  if ("same" in relation) return `relation ${relation.same.join(" = ")}`;
  if ("less" in relation) return `relation ${relation.less.join(" < ")}`;
  if ("sum" in relation) return `relation ${relation.sum.join(" + ")} = ${relation.is}`;
  return `relation parity of ${relation.parity.join(" and ")} ${relation.is}`;
};
