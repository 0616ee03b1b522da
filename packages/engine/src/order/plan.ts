import type { Step } from "../deduce/step.ts";
import type { Part } from "../speech/line.ts";
import type { Unmet } from "./wishes/wish.ts";

/** What a beat writes once it is over, by the outside names. */
export interface PlanWrites {
  readonly cells: Readonly<Record<string, readonly number[]>>;
  readonly spots: readonly { readonly digit: number; readonly house: string; readonly cells: readonly string[] }[];
}

/** An invitation to stop and look, said before a beat with a hard step, and the breath after it. */
export interface PlanPause {
  readonly say: string;
  readonly seconds: number;
}

export interface PlanBeat {
  /** Counted through the whole show, the rules first. */
  readonly n: number;
  readonly name: string;
  /** With its pause, its marks and the breath. */
  readonly seconds: number;
  readonly pause?: PlanPause;
  /** The presenter wants it featured. */
  readonly featured?: true;
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
  /** With its opening and its close. */
  readonly seconds: number;
  readonly open: string;
  readonly close: string;
  readonly beats: readonly PlanBeat[];
}

/** What is drawn while something is said: ids of rules and houses, names of cells. */
export interface PlanFocus {
  readonly rules: readonly string[];
  readonly houses: readonly string[];
  /** Of the one clue that serves as example, or of what the grids share. */
  readonly cells: readonly string[];
}

/** A beat of the rules: one kind, or one sentence of it. */
export interface RuleLine {
  readonly n: number;
  /** An instance's id, a kind's name, or `grids` for the rows, columns and regions themselves. */
  readonly rule: string;
  readonly title: string;
  readonly say: string;
  readonly seconds: number;
  readonly focus: PlanFocus;
}

/** The act in which the rules are told, before all others. */
export interface RulesAct {
  readonly title: string;
  readonly seconds: number;
  readonly lines: readonly RuleLine[];
}

/** A running order as `plan --json` gives it. */
export interface Plan {
  readonly solved: boolean;
  /** The highest level of a step. */
  readonly level: number;
  readonly seconds: number;
  /** Facts, recalls and marks that nobody showed the audience; 0 in a good order. */
  readonly unshown: number;
  readonly rules: RulesAct;
  readonly acts: readonly PlanAct[];
  /** In running order; `n` is the place in it. */
  readonly steps: readonly Step[];
  /** Rule kinds and techniques, by their names, that the audience meets in this show for the first time. */
  readonly meets: readonly string[];
  /** Wishes that the order does not fulfil, each with the reason. */
  readonly unmet: readonly Unmet[];
  /** Rules that the plan leaves out, as nobody has told their meaning. */
  readonly leftOut: readonly string[];
}
