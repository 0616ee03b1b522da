/**
 * A step as the outside sees it (plan --json, why --json): cells and houses by their names.
 * Meaning and laws: docs/architecture.md.
 */
export interface SpotFact {
  readonly digit: number;
  /** The digit lies in one of these cells. */
  readonly cells: readonly string[];
  /** A house or a rule instance. */
  readonly house: string;
}

export type Relation =
  | { readonly same: readonly [string, string] }
  | { readonly less: readonly [string, string] }
  | { readonly sum: readonly string[]; readonly is: number }
  | { readonly parity: readonly [string, string]; readonly is: "same" | "different" };

export interface Because {
  /** Cell to the digits that remain in it. */
  readonly facts: Readonly<Record<string, readonly number[]>>;
  readonly spots: readonly SpotFact[];
  readonly relations: readonly Relation[];
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  /** Numbers of earlier steps whose reason the line says again. */
  readonly recalls: readonly (number | string)[];
  /** Cells of the listed houses or clues whose grids allow fewer digits than the claim would need. No premise. */
  readonly limits: readonly string[];
  /** Houses and fixed sums to add and subtract. No premise: every name is listed above too. */
  readonly counts?: readonly { readonly plus: readonly string[]; readonly minus: readonly string[] }[];
}

/** What a step says and why, without its number, words and time: all that the prover looks at. */
export interface Claim {
  readonly places: Readonly<Record<string, number>>;
  readonly removes: Readonly<Record<string, readonly number[]>>;
  readonly spots: readonly SpotFact[];
  readonly relates: readonly Relation[];
  readonly because: Because;
  /** A what-if: one cell is tried as one digit; the last of its steps is the contradiction. */
  readonly assume?: Readonly<Record<string, number>>;
  readonly steps?: readonly Step[];
  readonly contradiction?: true;
  /** Digits for which the reasons hold, where somebody knows some: no premise, it spares the prover looking for them. */
  readonly example?: Readonly<Record<string, number>>;
}

export interface Step extends Claim {
  /** The place in the running order from 1; "12.1" inside the what-if 12. */
  readonly n: number | string;
  readonly technique: string;
  /** 1 to 5. */
  readonly level: number;
  /** The line in the pointing style. */
  readonly say: string;
  readonly seconds: number;
}
