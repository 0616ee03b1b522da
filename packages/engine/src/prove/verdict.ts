/** What the prover says of a claim. `counterexample`: cell name to digit, an assignment that obeys the premises. */
export type Verdict =
  | { readonly verdict: "proved" }
  | {
      readonly verdict: "refused";
      /** What it fails: a claimed cell, a spot, a relation, the premises themselves, or what is wrong with its form. */
      readonly failed: string;
      /** All touched cells; absent where the premises contradict each other or the claim is not well formed. */
      readonly counterexample?: Readonly<Record<string, number>>;
    }
  | { readonly verdict: "too big"; readonly failed: string };
