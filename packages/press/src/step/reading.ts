import type { SpotFact, Step } from "@solvewright/engine";

type Relation = Step["relates"][number];

/** What of a step is drawn, by the names of cells. */
export interface Reading {
  /** What follows: the digits of this step. */
  readonly so: Readonly<Record<string, number>>;
  readonly struck: Readonly<Record<string, readonly number[]>>;
  readonly newSpots: readonly SpotFact[];
  readonly newRelations: readonly Relation[];
  /** Cells that it leans on, hatched. */
  readonly leansOn: readonly string[];
  readonly relations: readonly Relation[];
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  readonly whatIf: Readonly<Record<string, number>>;
  /** What the what-if leads to. */
  readonly ledTo: Readonly<Record<string, number>>;
}

const cellsOfRelation = (relation: Relation): readonly string[] => {
  if ("same" in relation) return relation.same;
  if ("less" in relation) return relation.less;
  return "sum" in relation ? relation.sum : relation.parity;
};

export const readingOf = (step: Step): Reading => {
  const { facts, spots, relations, houses, rules, limits } = step.because;
  const leansOn = [
    ...Object.keys(facts),
    ...spots.flatMap(({ cells }) => cells),
    ...relations.flatMap(cellsOfRelation),
    ...limits,
  ];
  const whatIf = step.assume ?? {};
  const concluded = new Set([...Object.keys(step.places), ...Object.keys(whatIf)]);
  return {
    so: step.places,
    struck: step.removes,
    newSpots: step.spots,
    newRelations: step.relates,
    leansOn: [...new Set(leansOn)].filter((cell) => !concluded.has(cell)),
    relations,
    houses,
    rules,
    whatIf,
    ledTo: Object.assign({}, ...(step.steps ?? []).map(({ places }) => places)),
  };
};
