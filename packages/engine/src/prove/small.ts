import type { Because, Claim, Step } from "../deduce/step.ts";
import type { Definition } from "./definition.ts";
import { nameOfRelation, nameOfSpot } from "./form.ts";
import { prove } from "./prove.ts";

/** A claim with one premise, or one sub-step of a what-if, left out. */
interface Fewer {
  /** `house main/row/3`, `rule cage/1`, `fact r1c2`, `spot 4 in main/row/3`, `relation r1c1 = r2c5`, `step 12.1`. */
  readonly without: string;
  readonly claim: Claim;
}

const because = (claim: Claim, fewer: Partial<Because>): Claim => ({
  ...claim,
  because: { ...claim.because, ...fewer },
});

const nameOfStep = ({ n }: Step): string => `step ${n}`;

/** A list without each of its items in turn. */
const lessOne = <T>(list: readonly T[]): { item: T; rest: T[] }[] =>
  list.map((item, k) => ({ item, rest: list.filter((_, other) => other !== k) }));

/** The claim without each of its premises in turn: houses, rules, facts, spots, relations, then sub-steps. */
export const withoutOne = (claim: Claim): Fewer[] => {
  const { houses, rules, facts, spots, relations } = claim.because;
  return [
    ...lessOne(houses).map(({ item, rest }) => ({ without: `house ${item}`, claim: because(claim, { houses: rest }) })),
    ...lessOne(rules).map(({ item, rest }) => ({ without: `rule ${item}`, claim: because(claim, { rules: rest }) })),
    ...lessOne(Object.entries(facts)).map(({ item, rest }) => ({
      without: `fact ${item[0]}`,
      claim: because(claim, { facts: Object.fromEntries(rest) }),
    })),
    ...lessOne(spots).map(({ item, rest }) => ({ without: nameOfSpot(item), claim: because(claim, { spots: rest }) })),
    ...lessOne(relations).map(({ item, rest }) => ({
      without: nameOfRelation(item),
      claim: because(claim, { relations: rest }),
    })),
    ...lessOne<Step>(claim.steps ?? []).map(({ item, rest }) => ({
      without: nameOfStep(item),
      claim: { ...claim, steps: rest },
    })),
  ];
};

/** Whether a later sub-step leans on a cell as settled that this one places, were it by sight alone the only digit left. */
const isSettledFor = (later: readonly Step[], { places }: Step): boolean =>
  later.some(({ because: { facts } }) =>
    Object.entries(places).some(([name, digit]) => facts[name]?.length === 1 && facts[name][0] === digit),
  );

const isUsed = (claim: Claim, without: string): boolean =>
  (claim.steps ?? []).some((step, k, steps) => without === nameOfStep(step) && isSettledFor(steps.slice(k + 1), step));

/** What a proved claim stands without; nothing where its reasons are small. Sub-steps' own reasons: behind their numbers. */
export const needless = (claim: Claim, about: Definition, nodes?: number): string[] => [
  ...withoutOne(claim)
    .filter(({ without, claim: fewer }) => !isUsed(claim, without) && prove(fewer, about, nodes).verdict === "proved")
    .map(({ without }) => without),
  ...(claim.steps ?? []).flatMap((step) => needless(step, about, nodes).map((name) => `${step.n}: ${name}`)),
];
