import type { Step } from "../deduce/step.ts";
import type { Part } from "../speech/line.ts";

/** What a beat writes once it is over, by the outside names. */
export interface PlanWrites {
  readonly cells: Readonly<Record<string, readonly number[]>>;
  readonly spots: readonly { readonly digit: number; readonly house: string; readonly cells: readonly string[] }[];
}

export interface PlanBeat {
  /** Counted through the whole show, the rules first. */
  readonly n: number;
  readonly name: string;
  readonly seconds: number;
  readonly say: string;
  readonly parts: readonly Part[];
  /** The same in the placed style. */
  readonly placed: string;
  /** Numbers of its steps. */
  readonly steps: readonly (number | string)[];
  /** Beats whose digits or marks this one leans on, and those that lean on it. */
  readonly standsOn: readonly number[];
  readonly opens: readonly number[];
  readonly writes: PlanWrites;
}

export interface PlanAct {
  readonly title: string;
  readonly open: string;
  readonly close: string;
  readonly beats: readonly PlanBeat[];
}

export interface RuleLine {
  readonly n: number;
  /** An instance's id, a kind's name, or `grids` for the rows, columns and regions themselves. */
  readonly rule: string;
  readonly title: string;
  readonly say: string;
  readonly seconds: number;
}

/** A running order as `plan --json` gives it. */
export interface Plan {
  readonly solved: boolean;
  /** The highest level of a step. */
  readonly level: number;
  readonly seconds: number;
  /** Facts, recalls and marks that nobody showed the audience; 0 in a good order. */
  readonly unshown: number;
  readonly rules: { readonly seconds: number; readonly lines: readonly RuleLine[] };
  readonly acts: readonly PlanAct[];
  /** In running order; `n` is the place in it. */
  readonly steps: readonly Step[];
  /** Rules that the plan leaves out, as nobody has told their meaning. */
  readonly leftOut: readonly string[];
}
