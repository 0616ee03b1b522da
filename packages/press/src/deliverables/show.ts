import type { Board, Plan } from "@solvewright/engine";

/** What a pack is made from. */
export interface Show {
  readonly board: Board;
  readonly plan: Plan;
  /** By cell name. */
  readonly solution: Readonly<Record<string, number>>;
}

/** What the deliverables may use besides the show. */
export interface Assets {
  /** CSS that brings the board's face, for pictures that stand alone. */
  readonly fontCss?: string;
}

/** One file of a pack. */
export interface Deliverable {
  readonly name: string;
  /** One sentence: what it is for. */
  readonly purpose: string;
  text(show: Show, assets: Assets): string;
}
