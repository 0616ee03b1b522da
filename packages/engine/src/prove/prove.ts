import type { Claim } from "../deduce/step.ts";
import type { Definition } from "./definition.ts";
import { proveConsistent, proveDirectly } from "./direct.ts";
import { faultInForm } from "./form.ts";
import { type Prepared, preparedOf } from "./prepared.ts";
import type { Verdict } from "./verdict.ts";
import { proveWhatIf } from "./what-if.ts";

/** The budget of a claim, and of each sub-step of a what-if, in nodes. */
const usualNodes = 20_000;

const saysNothing = ({ places, removes, spots, relates }: Claim): boolean =>
  Object.keys(places).length + spots.length + relates.length === 0 &&
  Object.values(removes).every((digits) => digits.length === 0);

const faultIn = (claim: Claim, prepared: Prepared): string | undefined => {
  if (!claim.contradiction && saysNothing(claim)) return "nothing is claimed";
  if (claim.contradiction && !saysNothing(claim)) return "a contradiction claims nothing else";
  return faultInForm(claim, prepared);
};

const keyOf = ({ places, removes, spots, relates, because, contradiction }: Claim, nodes: number): string =>
  JSON.stringify([places, removes, spots, relates, because, contradiction, nodes]);

const verdicts = new WeakMap<Prepared, Map<string, Verdict>>();
const mostVerdicts = 20_000;

/** A plain sub-step comes back whenever a what-if around it is judged again. */
const proveOnce = (claim: Claim, prepared: Prepared, nodes: number): Verdict => {
  let known = verdicts.get(prepared);
  if (!known || known.size >= mostVerdicts) {
    known = new Map();
    verdicts.set(prepared, known);
  }
  const key = keyOf(claim, nodes);
  const verdict = known.get(key) ?? proveDirectly(claim, prepared, nodes);
  known.set(key, verdict);
  return verdict;
};

/** `inside`: as a sub-step of a what-if. */
const proveClaim = (claim: Claim, prepared: Prepared, nodes: number, inside: boolean): Verdict => {
  const fault = faultIn(claim, prepared);
  if (fault !== undefined) return { verdict: "refused", failed: fault };
  if (!claim.assume && !claim.steps) return (inside ? proveOnce : proveDirectly)(claim, prepared, nodes);
  const verdict = proveWhatIf(claim, prepared, (step) => proveClaim(step, prepared, nodes, true));
  // What is assumed outside may be what makes a what-if's reasons clash: only the outermost must be able to hold.
  return verdict.verdict !== "proved" || inside ? verdict : proveConsistent(claim, prepared, nodes);
};

/**
 * Whether a claim follows from its reasons, judged from the plain definitions alone (docs/architecture.md). A claim is
 * refused with an assignment that obeys the reasons and not the claim; one whose reasons contradict each other is
 * refused too, unless it is marked as the contradiction.
 */
export const prove = (claim: Claim, about: Definition, nodes: number = usualNodes): Verdict =>
  proveClaim(claim, preparedOf(about), nodes, false);
