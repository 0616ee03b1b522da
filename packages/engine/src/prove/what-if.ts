import { type Digits, has, isOne, isWithin } from "../board/digits.ts";
import type { Claim, Relation, SpotFact, Step } from "../deduce/step.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { faultInForm, nameOfRelation, nameOfSpot } from "./form.ts";
import { bitsOf, cellsNamed } from "./premises.ts";
import type { Prepared } from "./prepared.ts";
import type { Verdict } from "./verdict.ts";

/** What is known on the way through a what-if; all of it follows from the outside reasons and the assumption. */
interface Known {
  readonly prepared: Prepared;
  /** By `Cell`, as bits. */
  readonly digits: Int32Array;
  readonly spots: SpotFact[];
  /** In their normal form. */
  readonly relations: Set<string>;
  /** The listed houses and `different` scopes: sight goes through these. */
  readonly together: readonly (readonly Cell[])[];
}

const digitsAt = ({ digits }: Known, cell: Cell): Digits => digits[cell] as Digits;

const normal = (relation: Relation): string => {
  if ("less" in relation) return nameOfRelation(relation);
  if ("same" in relation) return nameOfRelation({ same: relation.same.toSorted() as [string, string] });
  if ("sum" in relation) return nameOfRelation({ ...relation, sum: relation.sum.toSorted() });
  return nameOfRelation({ ...relation, parity: relation.parity.toSorted() as [string, string] });
};

const settle = (known: Known, cell: Cell, digit: number): void => {
  const bit = 1 << digit;
  known.digits[cell]! &= bit;
  for (const cells of known.together)
    if (cells.includes(cell)) for (const other of cells) if (other !== cell) known.digits[other]! &= ~bit;
};

const settleAll = (known: Known, places: Readonly<Record<string, number>>): void => {
  for (const [name, digit] of Object.entries(places)) settle(known, known.prepared.cellOf.get(name)!, digit);
};

/** What a what-if starts from: its outside reasons, its settled facts seen by their neighbours, and what it assumes. */
const knownAtFirst = ({ because, assume = {} }: Claim, prepared: Prepared): Known => {
  const scopes = because.rules.flatMap((id) => prepared.rule(id)!.scopes);
  const known: Known = {
    prepared,
    digits: Int32Array.from(prepared.definition.domains),
    spots: [...because.spots],
    relations: new Set(because.relations.map(normal)),
    together: [
      ...because.houses.map((id) => prepared.house(id)!.cells),
      ...scopes.flatMap((scope) => ("different" in scope ? [scope.cells] : [])),
    ],
  };
  for (const [name, digits] of Object.entries(because.facts))
    known.digits[prepared.cellOf.get(name)!]! &= bitsOf(digits);
  for (const [name, digits] of Object.entries(because.facts))
    if (digits.length === 1) settle(known, prepared.cellOf.get(name)!, digits[0]!);
  settleAll(known, assume);
  return known;
};

/** A proved sub-step's conclusions may be leaned on by the later ones. */
const learn = (known: Known, { places, removes, spots, relates }: Claim): void => {
  settleAll(known, places);
  for (const [name, digits] of Object.entries(removes))
    known.digits[known.prepared.cellOf.get(name)!]! &= ~bitsOf(digits);
  known.spots.push(...spots);
  for (const relation of relates) known.relations.add(normal(relation));
};

const isFounded = (known: Known, name: string, digits: readonly number[]): boolean =>
  isWithin(digitsAt(known, known.prepared.cellOf.get(name)!), bitsOf(digits) as Digits);

/** A spot is known where a known one, or a listed complete house, has no other cell left for the digit. */
const isKnownSpot = (known: Known, claim: Claim, { digit, cells: names, house }: SpotFact): boolean => {
  const { prepared } = known;
  const cells = cellsNamed(names, prepared);
  const leavesNoOther = (others: readonly Cell[]): boolean =>
    others.every((cell) => cells.includes(cell) || !has(digitsAt(known, cell), digit));
  const home = claim.because.houses.includes(house) ? prepared.house(house) : undefined;
  if (home?.complete && has(home.digits, digit) && leavesNoOther(home.cells)) return true;
  return known.spots.some((spot) => spot.digit === digit && leavesNoOther(cellsNamed(spot.cells, prepared)));
};

/** The first reason of a sub-step that neither the what-if lists nor an earlier sub-step gives. */
const unfounded = ({ because }: Claim, known: Known, claim: Claim): string | undefined => {
  const house = because.houses.find((id) => !claim.because.houses.includes(id));
  if (house !== undefined) return `house ${house} is not listed outside`;
  const rule = because.rules.find((id) => !claim.because.rules.includes(id));
  if (rule !== undefined) return `rule ${rule} is not listed outside`;
  const fact = Object.entries(because.facts).find(([name, digits]) => !isFounded(known, name, digits));
  if (fact) return `fact ${fact[0]}`;
  const spot = because.spots.find((some) => !isKnownSpot(known, claim, some));
  if (spot) return nameOfSpot(spot);
  const relation = because.relations.find((some) => !known.relations.has(normal(some)));
  return relation && nameOfRelation(relation);
};

/** What a what-if may conclude: that its cell is not the digit tried, or is the only other one that its reasons leave. */
const faultInConclusion = (claim: Claim, { cellOf, definition }: Prepared): string | undefined => {
  const [name, digit] = Object.entries(claim.assume!)[0]!;
  const { places, removes, spots, relates, because } = claim;
  if (spots.length > 0 || relates.length > 0) return "a what-if concludes about its own cell only";
  const concluded = [...Object.keys(places), ...Object.keys(removes)];
  if (concluded.length === 0) return "nothing is claimed";
  if (concluded.some((other) => other !== name)) return "a what-if concludes about its own cell only";
  const facts = because.facts[name];
  const rest = (definition.domains[cellOf.get(name)!]! & (facts ? bitsOf(facts) : -1) & ~(1 << digit)) as Digits;
  const isOnlyOther = isOne(rest) && has(rest, places[name] ?? -1);
  const isTried = removes[name]?.every((other) => other === digit) ?? true;
  return isTried && (places[name] === undefined || isOnlyOther) ? undefined : name;
};

const faultInSteps = ({ assume = {}, steps = [], contradiction }: Claim): string | undefined => {
  if (Object.keys(assume).length !== 1) return "a what-if tries one cell";
  if (contradiction) return "a what-if is no contradiction itself";
  if (!steps.at(-1)?.contradiction) return "the last sub-step is no contradiction";
  const early = steps.slice(0, -1).find((step) => step.contradiction);
  return early && `${early.n}: a contradiction before the end`;
};

const within = ({ n }: Step, verdict: Verdict): Verdict =>
  verdict.verdict === "proved" ? verdict : { ...verdict, failed: `${n}: ${verdict.failed}` };

/** The first reason of a sub-step that is not there for it, looked for before anything is proved, as it is quickly found. */
const gapIn = (claim: Claim, prepared: Prepared): Verdict | undefined => {
  const known = knownAtFirst(claim, prepared);
  for (const step of claim.steps!) {
    const gap = faultInForm(step, prepared) ?? unfounded(step, known, claim);
    if (gap !== undefined) return within(step, { verdict: "refused", failed: gap });
    learn(known, step);
  }
  return undefined;
};

/**
 * A what-if is proved by its sub-steps. Each of them is proved as a claim of its own (`proveStep`), and may lean only on
 * houses and rules that the what-if lists, and on what follows from the what-if's reasons, the digit tried and the
 * sub-steps before it: a fact must hold all that is left in its cell by these, by sight through the listed houses and
 * rules from the digit tried, from settled facts and from what sub-steps place. The last sub-step is the contradiction.
 */
export const proveWhatIf = (claim: Claim, prepared: Prepared, proveStep: (step: Claim) => Verdict): Verdict => {
  const fault = faultInSteps(claim) ?? faultInConclusion(claim, prepared);
  if (fault !== undefined) return { verdict: "refused", failed: fault };
  const gap = gapIn(claim, prepared);
  if (gap) return gap;
  for (const step of claim.steps!) {
    const verdict = proveStep(step);
    if (verdict.verdict !== "proved") return within(step, verdict);
  }
  return { verdict: "proved" };
};
