/** What the prover says of a claim. `counterexample`: cell name to digit, an assignment that obeys the premises. */
export type Verdict =
  | { readonly verdict: "proved" }
  | {
      readonly verdict: "refused";
      /** What it fails: a claimed cell, a spot, a relation, or the premises themselves. */
      readonly failed: string;
      /** Absent where the premises contradict each other. */
      readonly counterexample?: Readonly<Record<string, number>>;
    }
  | { readonly verdict: "too big"; readonly failed: string };
