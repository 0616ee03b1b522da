import type { Claim } from "../deduce/step.ts";
import { type Atom, atomsOf } from "./atom.ts";
import type { Definition } from "./definition.ts";
import { obeys } from "./obeys.ts";
import { type Premises, premisesOf } from "./premises.ts";
import type { Prepared } from "./prepared.ts";
import { type Problem, problemOf } from "./problem.ts";
import { type Found, type Session, sessionOf, type Values } from "./session.ts";
import type { Verdict } from "./verdict.ts";

/** Everything about one claim that its questions share. */
interface Trial {
  readonly premises: Premises;
  readonly problem: Problem;
  readonly session: Session;
  readonly definition: Definition;
}

const trialOf = (claim: Claim, prepared: Prepared, nodes: number): Trial => {
  const premises = premisesOf(claim, prepared);
  const problem = problemOf(premises);
  return { premises, problem, session: sessionOf(problem, nodes), definition: prepared.definition };
};

/** A found assignment held against the plain definitions, so that no refusal rests on the search alone. */
const counterexample = (
  values: Values,
  atom: Atom | undefined,
  { premises, definition }: Trial,
): Record<string, number> => {
  if (!obeys(values, premises, definition.domains) || atom?.isMet(values))
    throw new Error("the prover's search took an assignment that the definitions forbid");
  const digits: Record<string, number> = {};
  for (const [cell, digit] of values.entries()) if (digit >= 0) digits[definition.names[cell]!] = digit;
  return digits;
};

const proved: Verdict = { verdict: "proved" };

/** Proved where the search for the opposite has found nothing. */
const judged = (found: Found, failed: string, atom: Atom | undefined, trial: Trial): Verdict => {
  if (found === "none") return proved;
  if (found === "too big") return { verdict: "too big", failed };
  return { verdict: "refused", failed, counterexample: counterexample(found, atom, trial) };
};

/**
 * The last assignments that obeyed a claim's premises, the latest first: one often obeys the next one's, which are most
 * often fewer. It spares a search and changes no verdict but one that would be too big.
 */
const witnesses = new WeakMap<Definition, Values[]>();
const mostWitnesses = 6;

const recalled = ({ premises, definition }: Trial): boolean => {
  const known = witnesses.get(definition) ?? [];
  const place = known.findIndex((values) => obeys(values, premises, definition.domains));
  if (place > 0) known.unshift(...known.splice(place, 1));
  return place >= 0;
};

const remember = (values: Values, { definition }: Trial): void => {
  witnesses.set(definition, [values, ...(witnesses.get(definition) ?? [])].slice(0, mostWitnesses));
};

const suggested = ({ example }: Claim, { definition }: Trial): Values => {
  const values = new Int8Array(definition.names.length).fill(-1);
  for (const [name, digit] of Object.entries(example ?? {})) values[definition.cellOf.get(name) ?? -1] = digit;
  return values;
};

/** Proved where at least one assignment obeys the premises. */
const consistent = (trial: Trial, claim: Claim): Verdict => {
  const { premises, session, definition } = trial;
  if (recalled(trial)) return proved;
  const values = claim.example && suggested(claim, trial);
  if (values && obeys(values, premises, definition.domains)) {
    remember(values, trial);
    return proved;
  }
  const found = session.find();
  if (found === "too big") return { verdict: "too big", failed: "premises" };
  if (found === "none") return { verdict: "refused", failed: "premises" };
  if (!obeys(found, premises, definition.domains)) throw new Error("the prover's search broke a premise");
  remember(found, trial);
  return proved;
};

/** Whether the reasons of a claim can be true together, whatever it says. */
export const proveConsistent = (claim: Claim, prepared: Prepared, nodes: number): Verdict =>
  consistent(trialOf(claim, prepared, nodes), claim);

/** Searches for an assignment that obeys the reasons and not the conclusion, one thing concluded after the other. */
export const proveDirectly = (claim: Claim, prepared: Prepared, nodes: number): Verdict => {
  const trial = trialOf(claim, prepared, nodes);
  if (claim.contradiction) return judged(trial.session.find(), "contradiction", undefined, trial);
  for (const atom of atomsOf(claim, prepared, trial.problem)) {
    const verdict = judged(trial.session.find(atom.deny, atom.denial), atom.name, atom, trial);
    if (verdict.verdict !== "proved") return verdict;
  }
  return consistent(trial, claim);
};
