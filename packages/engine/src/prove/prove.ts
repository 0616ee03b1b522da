import { digitsOf, min, type Digits } from "../board/digits.ts";
import type { Claim } from "../deduce/step.ts";
import { assignmentOf, type Budget, type Found, obeys, usualBudget } from "./assignment.ts";
import type { Definition } from "./definition.ts";
import { cellsOf, type Problem, problemOf, relationScope } from "./problem.ts";
import type { Verdict } from "./verdict.ts";
import { proveWhatIf } from "./what-if.ts";

/** One thing that a claim says, as its opposite: a problem and where to begin the search for an assignment. */
interface Denial {
  readonly of: string;
  readonly problem: Problem;
  readonly start: Int32Array;
}

const masked = (problem: Problem, masks: readonly (readonly [place: number, digits: number])[]): Int32Array => {
  const start = problem.domains.slice();
  for (const [place, digits] of masks) start[place]! &= digits;
  return start;
};

function* denialsOf(claim: Claim, problem: Problem, about: Definition): Iterable<Denial> {
  const place = (name: string): number => problem.placeOf.get(about.cellOf.get(name)!)!;
  for (const [name, digit] of Object.entries(claim.places)) yield { of: name, problem, start: masked(problem, [[place(name), ~(1 << digit)]]) };
  for (const [name, digits] of Object.entries(claim.removes)) yield { of: name, problem, start: masked(problem, [[place(name), digitsOf(digits)]]) };
  for (const { digit, cells, house } of claim.spots)
    yield { of: `${digit} in ${house}`, problem, start: masked(problem, cellsOf(about, cells).map((cell) => [problem.placeOf.get(cell)!, ~(1 << digit)])) };
  for (const relation of claim.relates) {
    const denied = problemOf(claim, about, [relationScope(about, relation, true)]);
    yield { of: JSON.stringify(relation), problem: denied, start: denied.domains };
  }
}

const counterexample = (problem: Problem, digits: Int32Array, about: Definition): Record<string, number> => {
  const digitAt = (place: number): number => min(digits[place] as Digits);
  if (!obeys(problem, digitAt)) throw new Error("the prover found an assignment that breaks its own premises");
  return Object.fromEntries(problem.cells.map((cell, place) => [about.names[cell]!, digitAt(place)]));
};

const concludes = ({ places, removes, spots, relates }: Claim): boolean =>
  Object.keys(places).length + Object.keys(removes).length + spots.length + relates.length > 0;

const proveContradiction = (claim: Claim, about: Definition, budget: Budget): Verdict => {
  const problem = problemOf(claim, about);
  const found = assignmentOf(problem, problem.domains, budget);
  if (concludes(claim)) return { verdict: "refused", failed: "a contradiction concludes nothing else" };
  if (found.found === "none") return { verdict: "proved" };
  if (found.found === "too big") return { verdict: "too big", failed: "the contradiction" };
  return { verdict: "refused", failed: "the contradiction", counterexample: counterexample(problem, found.digits, about) };
};

/**
 * Judges a claim from the plain definitions alone: assumes the opposite of each thing it says and looks for an
 * assignment of the touched cells that obeys the listed houses, rules and facts. Contradictory premises prove nothing.
 */
export const prove = (claim: Claim, about: Definition, budget: Budget = usualBudget): Verdict => {
  if (claim.assume) return proveWhatIf(claim, about, budget);
  if (claim.contradiction) return proveContradiction(claim, about, budget);
  if (!concludes(claim)) return { verdict: "refused", failed: "it says nothing" };
  const problem = problemOf(claim, about);
  for (const denial of denialsOf(claim, problem, about)) {
    const found: Found = assignmentOf(denial.problem, denial.start, budget);
    if (found.found === "too big") return { verdict: "too big", failed: denial.of };
    if (found.found === "assignment") return { verdict: "refused", failed: denial.of, counterexample: counterexample(denial.problem, found.digits, about) };
  }
  const possible = assignmentOf(problem, problem.domains, budget);
  if (possible.found === "too big") return { verdict: "too big", failed: "the premises" };
  return possible.found === "none" ? { verdict: "refused", failed: "the premises contradict each other" } : { verdict: "proved" };
};
