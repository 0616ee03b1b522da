import type { Board } from "../board/board.ts";
import type { Verdict } from "../prove/verdict.ts";
import { claimOf } from "./claim.ts";
import type { Deduction } from "./deduction.ts";
import type { Claim } from "./step.ts";

/** Whoever judges claims; the chain is given one, so that reasoning and proof share no code. */
export type Prove = (claim: Claim) => Verdict;

/** A deduction that was refused: a fault of ours, never shown, kept with what is needed to look at it again. */
export interface Refusal {
  readonly deduction: Deduction;
  readonly claim: Claim;
  readonly verdict: Verdict;
}

/** Asks the prover about deductions, each claim once, and keeps what was refused as first found. */
export interface Judge {
  holds(deduction: Deduction): boolean;
  /** Digits that fill the board, by cell name, for the prover to see that what-ifs' reasons can hold. */
  suppose(example: Readonly<Record<string, number>>): void;
  readonly refusals: readonly Refusal[];
  /** Notes that a deduction as its technique gave it does not hold. */
  reject(deduction: Deduction): void;
  isRejected(deduction: Deduction): boolean;
}

const keyOf = ({ places, removes, spots, relates, because, assume, steps, contradiction }: Deduction): string =>
  JSON.stringify([
    [...places],
    [...removes],
    spots,
    relates,
    [...because.facts],
    because.houses,
    because.rules,
    because.spots,
    because.relations,
    assume,
    steps?.map(keyOf),
    contradiction,
  ]);

export const judgeOf = (board: Board, prove: Prove): Judge => {
  const known = new Map<string, Verdict>();
  const rejected = new Set<string>();
  const refusals: Refusal[] = [];
  let example: Claim["example"];
  const asked = (deduction: Deduction): Claim => {
    const claim = claimOf(board, deduction);
    return deduction.assume && example ? { ...claim, example } : claim;
  };
  const judge = (deduction: Deduction): Verdict => {
    const key = keyOf(deduction);
    const verdict = known.get(key) ?? prove(asked(deduction));
    known.set(key, verdict);
    return verdict;
  };
  return {
    holds: (deduction) => judge(deduction).verdict === "proved",
    suppose: (known) => {
      example = known;
    },
    refusals,
    reject: (deduction) => {
      rejected.add(keyOf(deduction));
      const verdict = judge(deduction);
      // Premises that contradict each other turn up inside what-ifs by their nature; a counterexample never should.
      if (verdict.verdict === "refused" && verdict.counterexample)
        refusals.push({ deduction, claim: claimOf(board, deduction), verdict });
    },
    isRejected: (deduction) => rejected.size > 0 && rejected.has(keyOf(deduction)),
  };
};
