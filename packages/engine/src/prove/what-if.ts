import { both, type Digits, digitsOf, isOne, only } from "../board/digits.ts";
import type { Claim, Step } from "../deduce/step.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Budget } from "./assignment.ts";
import type { Definition } from "./definition.ts";
import { cellsOf } from "./problem.ts";
import { prove } from "./prove.ts";
import type { Verdict } from "./verdict.ts";

/** What holds inside a what-if so far: digits by cell, and the spots and relations that were concluded. */
interface Inside {
  readonly possible: Digits[];
  readonly spots: Set<string>;
  readonly relations: Set<string>;
}

const refused = (failed: string): Verdict => ({ verdict: "refused", failed });

/** Sets of cells that may not repeat a digit, by the houses and rules that the what-if lists. */
const apartSets = ({ because }: Claim, about: Definition): (readonly Cell[])[] => [
  ...because.houses.map((id) => about.houses.get(id)!.cells),
  ...because.rules.flatMap((id) => about.rules.get(id)!.scopes.flatMap((scope) => ("different" in scope ? [scope.cells] : []))),
];

/** Lets settled digits leave the cells that see them, until nothing changes. */
const settle = (possible: Digits[], apart: readonly (readonly Cell[])[]): void => {
  for (let changed = true; changed; ) {
    changed = false;
    for (const cells of apart)
      for (const cell of cells) {
        const digits = possible[cell]!;
        if (!isOne(digits)) continue;
        for (const other of cells) {
          if (other === cell || (possible[other]! & digits) === 0) continue;
          possible[other] = (possible[other]! & ~digits) as Digits;
          changed = true;
        }
      }
  }
};

const narrow = (possible: Digits[], about: Definition, name: string, kept: Digits): void => {
  const cell = about.cellOf.get(name)!;
  possible[cell] = both(possible[cell]!, kept);
};

const fixedText = (value: unknown): string => JSON.stringify(value);

const begin = (claim: Claim, about: Definition): Inside => {
  const possible = [...about.domains];
  for (const [name, digits] of Object.entries(claim.because.facts)) narrow(possible, about, name, digitsOf(digits));
  const [[name, digit]] = Object.entries(claim.assume!) as [[string, number]];
  narrow(possible, about, name, only(digit));
  return {
    possible,
    spots: new Set([...claim.because.spots.map(fixedText)]),
    relations: new Set([...claim.because.relations.map(fixedText)]),
  };
};

/** The first premise of a sub-step that nothing said before it gives. */
const unearned = (step: Step, claim: Claim, inside: Inside, about: Definition): string | undefined => {
  const { because } = step;
  const alien = [...because.houses.filter((id) => !claim.because.houses.includes(id)), ...because.rules.filter((id) => !claim.because.rules.includes(id))];
  if (alien.length > 0) return `${alien[0]} is not among the reasons of the what-if`;
  const fact = Object.entries(because.facts).find(([name, digits]) => (inside.possible[about.cellOf.get(name)!]! & ~digitsOf(digits)) !== 0);
  if (fact) return `nothing says that ${fact[0]} has only ${fact[1].join(" ")}`;
  const spot = because.spots.find((other) => !inside.spots.has(fixedText(other)));
  if (spot) return `nothing says where the ${spot.digit} of ${spot.house} is`;
  return because.relations.some((other) => !inside.relations.has(fixedText(other))) ? "a relation that nothing says" : undefined;
};

const conclude = (step: Step, inside: Inside, about: Definition): void => {
  for (const [name, digit] of Object.entries(step.places)) narrow(inside.possible, about, name, only(digit));
  for (const [name, digits] of Object.entries(step.removes)) narrow(inside.possible, about, name, ~digitsOf(digits) as Digits);
  for (const spot of step.spots) inside.spots.add(fixedText(spot));
  for (const relation of step.relates) inside.relations.add(fixedText(relation));
};

const isOfAssumption = (claim: Claim): boolean => {
  const [[name, digit], ...more] = Object.entries(claim.assume!) as [[string, number], ...[string, number][]];
  const removed = Object.entries(claim.removes);
  const only = removed.length === 1 && removed[0]![0] === name && removed[0]![1].length === 1 && removed[0]![1][0] === digit;
  return more.length === 0 && only && Object.keys(claim.places).length + claim.spots.length + claim.relates.length === 0;
};

/**
 * Judges a what-if by its sub-steps: each is proved as a claim of its own; each leans only on the assumption, on what the
 * what-if lists from outside, on earlier sub-steps, and on sight through the listed houses and rules; the last is the
 * contradiction. Then the assumption is false under the what-if's own reasons.
 */
export const proveWhatIf = (claim: Claim, about: Definition, budget: Budget): Verdict => {
  if (!isOfAssumption(claim)) return refused("a what-if takes out the one digit that it tries");
  const steps = claim.steps ?? [];
  if (!steps.at(-1)?.contradiction) return refused("the last sub-step is no contradiction");
  if (steps.slice(0, -1).some((step) => step.contradiction)) return refused("a contradiction before the last sub-step");
  cellsOf(about, [...Object.keys(claim.assume!), ...Object.keys(claim.because.facts)]);
  const inside = begin(claim, about);
  const apart = apartSets(claim, about);
  for (const step of steps) {
    settle(inside.possible, apart);
    const missing = unearned(step, claim, inside, about);
    if (missing) return refused(`sub-step ${step.n}: ${missing}`);
    const verdict = prove(step, about, budget);
    if (verdict.verdict !== "proved") return { ...verdict, failed: `sub-step ${step.n}: ${verdict.failed}` };
    conclude(step, inside, about);
  }
  return { verdict: "proved" };
};
