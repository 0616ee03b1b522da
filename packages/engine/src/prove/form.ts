import type { Claim, Relation, SpotFact } from "../deduce/step.ts";
import type { Prepared } from "./prepared.ts";

/** The cells that a relation is between. */
export const namesIn = (relation: Relation): readonly string[] => {
  if ("same" in relation) return relation.same;
  if ("less" in relation) return relation.less;
  return "sum" in relation ? relation.sum : relation.parity;
};

const faultInSpot = (
  { digit, cells, house }: SpotFact,
  { cellOf, house: houseOf, rule }: Prepared,
): string | undefined => {
  const home = houseOf(house) ?? rule(house);
  if (!home) return `no house or rule ${house}`;
  const isInside = (name: string): boolean => home.cells.length === 0 || home.cells.includes(cellOf.get(name)!);
  return cells.every(isInside) ? undefined : `spot ${digit}: not all of its cells lie in ${house}`;
};

const isDigit = (digit: number): boolean => Number.isInteger(digit) && digit >= 0 && digit <= 31;

const digitsNamed = ({ places, removes, spots, because, assume = {} }: Claim): number[] => [
  ...Object.values(places),
  ...Object.values(removes).flat(),
  ...Object.values(because.facts).flat(),
  ...Object.values(assume),
  ...spots.map(({ digit }) => digit),
  ...because.spots.map(({ digit }) => digit),
];

const cellsNamed = ({ places, removes, spots, relates, because, assume = {} }: Claim): string[] => [
  ...Object.keys(places),
  ...Object.keys(removes),
  ...Object.keys(because.facts),
  ...Object.keys(assume),
  ...spots.flatMap(({ cells }) => cells),
  ...because.spots.flatMap(({ cells }) => cells),
  ...relates.flatMap(namesIn),
  ...because.relations.flatMap(namesIn),
];

/** The first thing in a claim that this puzzle does not have, its sub-steps left aside. */
export const faultInForm = (claim: Claim, prepared: Prepared): string | undefined => {
  const { because } = claim;
  const cell = cellsNamed(claim).find((name) => !prepared.cellOf.has(name));
  if (cell !== undefined) return `no cell ${cell}`;
  const digit = digitsNamed(claim).find((some) => !isDigit(some));
  if (digit !== undefined) return `no digit ${digit}`;
  const house = because.houses.find((id) => !prepared.house(id));
  if (house !== undefined) return `no house ${house}`;
  const rule = because.rules.find((id) => !prepared.rule(id));
  if (rule !== undefined) return `no rule ${rule}`;
  for (const spot of [...claim.spots, ...because.spots]) {
    const fault = faultInSpot(spot, prepared);
    if (fault !== undefined) return fault;
  }
  return undefined;
};

export const nameOfSpot = ({ digit, house }: SpotFact): string => `spot ${digit} in ${house}`;
export const nameOfRelation = (relation: Relation): string => {
  if ("same" in relation) return `relation ${relation.same.join(" = ")}`;
  if ("less" in relation) return `relation ${relation.less.join(" < ")}`;
  if ("sum" in relation) return `relation ${relation.sum.join(" + ")} = ${relation.is}`;
  return `relation parity of ${relation.parity.join(" and ")} ${relation.is}`;
};
