import type { Part, Plan, Step } from "@solvewright/engine";
import type { PuzzleData } from "@solvewright/press";
import type { Position } from "../solve/position.ts";

/** What the page asks its helper. */
export type Ask =
  | { readonly ask: "start"; readonly puzzle: PuzzleData }
  /** `eye`: the cells where the solver was last; `told`: digits that earlier nudges took out, marked or not. */
  | {
      readonly ask: "nudge";
      readonly position: Position;
      readonly eye: readonly string[];
      readonly told: Readonly<Record<string, readonly number[]>>;
    }
  | { readonly ask: "why"; readonly position: Position; readonly cell: string; readonly digit: number }
  | { readonly ask: "check"; readonly position: Position }
  /** Works something out that nobody asked for: code runs slowly at first, and then nobody waits for it. */
  | { readonly ask: "warm" }
  /** Works out the show's running order, which takes long; a helper of its own does that. */
  | { readonly ask: "order" }
  | { readonly ask: "learn"; readonly plan: Plan };

/** A line as it is pointed at on the board, and as it is heard. */
export interface Told {
  readonly parts: readonly Part[];
  readonly placed: string;
  readonly steps: readonly Step[];
}

export interface Nudge {
  readonly where: string;
  readonly use: string;
  readonly line: Told;
  /** The cells that it settles; where it settles none, those that lose a digit. */
  readonly cells: readonly string[];
}

/** What comes back. `wrong` counts settled digits that are not right; help leaves them out. */
export type Reply =
  | { readonly reply: "start"; readonly sound: boolean }
  | { readonly reply: "nudge"; readonly wrong: number; readonly nudge?: Nudge }
  | {
      readonly reply: "why";
      readonly wrong: number;
      readonly answer: "is" | "can" | "cannot" | "unknown";
      /** The answer in lines, each drawn by its steps; more than a few are told by their last ones, and `steps` says so. */
      readonly lines: readonly Told[];
      readonly steps: number;
    }
  | { readonly reply: "check"; readonly wrong: readonly string[]; readonly settled: number; readonly open: number }
  | { readonly reply: "order"; readonly plan?: Plan }
  | { readonly reply: "warm" | "learn" };

export type Posted = { readonly id: number } & Ask;
export type Answered = { readonly id: number } & (Reply | { readonly failed: string });
