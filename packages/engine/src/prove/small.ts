import type { Claim } from "../deduce/step.ts";
import { type Budget, usualBudget } from "./assignment.ts";
import type { Definition } from "./definition.ts";
import { prove } from "./prove.ts";

/** A claim with one premise left out, and what was left out. */
interface Fewer {
  readonly without: string;
  readonly claim: Claim;
}

const withBecause = (claim: Claim, because: Partial<Claim["because"]>): Claim => ({ ...claim, because: { ...claim.because, ...because } });

/** The claim without each of its premises in turn. */
export const withoutOne = (claim: Claim): Fewer[] => {
  const { because } = claim;
  const facts = Object.entries(because.facts);
  return [
    ...because.houses.map((id) => ({ without: id, claim: withBecause(claim, { houses: because.houses.filter((other) => other !== id) }) })),
    ...because.rules.map((id) => ({ without: id, claim: withBecause(claim, { rules: because.rules.filter((other) => other !== id) }) })),
    ...facts.map(([cell]) => ({ without: cell, claim: withBecause(claim, { facts: Object.fromEntries(facts.filter(([other]) => other !== cell)) }) })),
    ...because.spots.map((spot) => ({ without: JSON.stringify(spot), claim: withBecause(claim, { spots: because.spots.filter((other) => other !== spot) }) })),
    ...because.relations.map((relation) => ({
      without: JSON.stringify(relation),
      claim: withBecause(claim, { relations: because.relations.filter((other) => other !== relation) }),
    })),
  ];
};

/** The premises that a proved claim stands without; none where its reasons are small. */
export const needless = (claim: Claim, about: Definition, budget: Budget = usualBudget): string[] =>
  withoutOne(claim).flatMap(({ without, claim: fewer }) => (prove(fewer, about, budget).verdict === "proved" ? [without] : []));
