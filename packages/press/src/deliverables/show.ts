import type { Board, Plan } from "@solvewright/engine";
import type { Recorded } from "../take/recorded.ts";

/** What a pack is made from. */
export interface Show {
  readonly board: Board;
  readonly plan: Plan;
  /** By cell name. */
  readonly solution: Readonly<Record<string, number>>;
  /** The day of the show, as it is said: "Friday 27 November 2026". */
  readonly date?: string;
  /** The puzzle is not letter by letter as its setter made it. */
  readonly isChanged?: boolean;
  /** Left out before it was recorded. */
  readonly recorded?: Recorded;
}

/** What the deliverables may use besides the show. */
export interface Assets {
  /** CSS that brings the board's face, for pictures that stand alone. */
  readonly fontCss?: string;
  /** The built try-it page, into which a puzzle is put. */
  readonly page: string;
}

/** What a file needs that nobody can work out from the puzzle; the last four are the setter's consents. */
export type Fact = "credit" | "link" | "date" | "consent" | "page" | "print" | "change";

/** One file of a pack; the same show makes the same bytes. */
export interface Deliverable {
  readonly name: string;
  /** One sentence: what it is for. */
  readonly purpose: string;
  /** Files of one group are listed as one: how their names look, and what they are for together. */
  readonly group?: { readonly names: string; readonly purpose: string };
  /** What it should not go out without. */
  readonly needs: readonly Fact[];
  /** Whether the show has what it is made from; always where left out. */
  isFor?(show: Show): boolean;
  make(show: Show, assets: Assets): string | Uint8Array;
}
