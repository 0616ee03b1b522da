import { cellsOfRelation, type SpotFact, type Step } from "@solvewright/engine";
import type { LetteredReason } from "./letters.ts";

type Relation = Step["relates"][number];
type Digits = Readonly<Record<string, number>>;
type Marks = Readonly<Record<string, readonly number[]>>;

/** Marks that are written once it is said. */
export interface Writes {
  readonly cells?: Marks;
  readonly spots?: readonly SpotFact[];
}

/** What of some steps is drawn, by the names of cells. */
export interface Reading {
  /** The digits that follow, and those that follow next. */
  readonly so: Digits;
  readonly next: Digits;
  readonly struck: Marks;
  readonly newMarks: Marks;
  readonly newSpots: readonly SpotFact[];
  readonly newRelations: readonly Relation[];
  /** Cells that it leans on, hatched. */
  readonly leansOn: readonly string[];
  readonly relations: readonly Relation[];
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  readonly whatIf: Digits;
  /** What the what-if leads to. */
  readonly ledTo: Digits;
}

/** What a reading is made of: steps that are said together, and what stands round them. */
export interface Told {
  readonly steps: readonly Step[];
  readonly next?: Digits;
  readonly letters?: readonly LetteredReason[];
  readonly writes?: Writes;
}

const cellsBehind = ({ because: { facts, spots, relations, limits } }: Step): string[] => [
  ...Object.keys(facts),
  ...spots.flatMap(({ cells }) => cells),
  ...relations.flatMap(cellsOfRelation),
  ...limits,
];

const lettered = (letters: readonly LetteredReason[]): string[] =>
  letters.flatMap(({ of }) => ("cells" in of ? of.cells : []));

const merged = (all: readonly Digits[]): Digits => Object.assign({}, ...all);

const mergedMarks = (all: readonly Marks[]): Marks => {
  const cells = [...new Set(all.flatMap(Object.keys))];
  return Object.fromEntries(cells.map((cell) => [cell, [...new Set(all.flatMap((marks) => marks[cell] ?? []))]]));
};

const distinct = <T>(list: readonly T[]): T[] => [...new Set(list)];

/** Steps as they are drawn: the first digits that they place are what follows, later ones follow next. */
export const readingOf = ({ steps, next = {}, letters = [], writes = {} }: Told): Reading => {
  const placing = steps.map(({ places }) => places).filter((places) => Object.keys(places).length > 0);
  const [so = {}, ...later] = placing;
  const whatIf = merged(steps.map(({ assume }) => assume ?? {}));
  const concluded = { ...so, ...whatIf };
  return {
    so,
    next: merged([...later, next]),
    struck: mergedMarks(steps.map(({ removes }) => removes)),
    newMarks: writes.cells ?? {},
    newSpots: [...steps.flatMap(({ spots }) => spots), ...(writes.spots ?? [])],
    newRelations: steps.flatMap(({ relates }) => relates),
    leansOn: distinct([...steps.flatMap(cellsBehind), ...lettered(letters)]).filter((cell) => !(cell in concluded)),
    relations: steps.flatMap(({ because }) => because.relations),
    houses: distinct(steps.flatMap(({ because }) => because.houses)),
    rules: distinct(steps.flatMap(({ because }) => because.rules)),
    whatIf,
    ledTo: merged(steps.flatMap(({ steps: inner = [] }) => inner.map(({ places }) => places))),
  };
};

/** The letters whose reason is drawn: of cells always, of a house or a rule where a step uses it. */
export const lettersDrawn = (letters: readonly LetteredReason[], { houses, rules }: Reading): LetteredReason[] =>
  letters.filter(({ of }) => {
    if ("house" in of) return houses.includes(of.house);
    return "rule" in of ? rules.includes(of.rule) : true;
  });
