import type { Digits } from "../board/digits.ts";
import type { Shape } from "../marks/shape.ts";
import type { Canvas, Cell } from "../puzzle/canvas.ts";
import type { Grid } from "../puzzle/puzzle.ts";
import type { State, Term } from "../terms/term.ts";
import type { BodyShape } from "./body.ts";

/** What any body may carry beside its own keys. */
export interface Body {
  /** The setter's colour, `#rrggbb`. */
  readonly tint?: string;
  readonly note?: string;
}

/**
 * The plain definition of a rule, cut into the smallest pieces that say it. No hand-written look-ahead.
 * `different`: no digit twice; with as many cells as digits (the union of its cells' where not said) each digit once;
 * `house` names it where the format calls it a house. `holds`: at most three cells. `start`/`next`/`ok`: read along the
 * cells, `undefined` is a dead end, `index` counts the cells from 0.
 */
export type Scope =
  | { readonly cells: readonly Cell[]; readonly different: true; readonly digits?: Digits; readonly house?: string }
  | { readonly cells: readonly Cell[]; readonly holds: (digits: readonly number[]) => boolean }
  | {
      readonly cells: readonly Cell[];
      readonly start: State;
      readonly next: (state: State, digit: number, index: number) => State | undefined;
      readonly ok: (state: State) => boolean;
    };

/** What a mark on an edge is called by the rules that speak of missing ones. */
export type EdgeMark = "dot" | "bar" | "xv";

/** What a kind may look at when it resolves a body: everything in the file but the other rules' meanings. */
export interface Setting {
  readonly canvas: Canvas;
  readonly grids: readonly Grid[];
  /** The digits that all grids of each cell allow, by `Cell`. */
  readonly domains: readonly Digits[];
  /** The pairs of cells that bear such a mark anywhere in the file. */
  marked(mark: EdgeMark): readonly (readonly [Cell, Cell])[];
  /**
   * Takes so much off what exact checks may try in all rules of the file; false once that is used up: then what can't be
   * told cheaply is taken to be possible. Where left out, only each check for itself is bounded.
   */
  spend?(tries: number): boolean;
}

/** What is wrong with a body: where in it (keys and list indices), what was read, what would be right. */
export interface Fault {
  readonly at?: readonly (string | number)[];
  readonly read: string;
  readonly right: string;
}
/** What `resolve` gives back where it can't: every reason. */
export interface Faulty {
  readonly faults: readonly Fault[];
}
export const faulty = (...faults: readonly Fault[]): Faulty => ({ faults });

/** What every instance has: its id and all cells that it binds (of a whole-grid rule: none, it binds what is touched). */
export interface Bound {
  readonly cells: readonly Cell[];
}
export interface Named {
  readonly id: string;
}

/** How a rule is spoken of. English; nouns without article and in lower case unless a letter demands it. */
export interface Words {
  /** The rule as its own sentence or two, complete, with the reading that is meant: "Digits in a cage don't repeat and ..." */
  readonly rule: string;
  /** All of its kind together, as a heading: "White dots". */
  readonly title: string;
  /** One instance: "white dot"; "this white dot" and "the white dot" are made from it. */
  readonly noun: string;
  readonly plural: string;
  /** The instance where its number tells it apart: "cage of 13". The noun where left out. */
  readonly called?: string;
  /** Cells that say where it is: "the white dot between ... and ...". Whole-grid rules have none. */
  readonly at: readonly Cell[];
  /** How its cells are related, said of them: "differ by 1", "climb from the bulb", "add up to 13". */
  readonly holds: string;
}

/** What a step rests on when it uses one clue, and what the clue takes from its cells: asked of the kind, which may know why. */
export interface Asked {
  /** The digits that the step's premises leave of a cell, sight of settled digits among them included. */
  known(cell: Cell): Digits;
  /** Whether a listed house, or a listed rule's scope that says `different`, keeps two cells apart. */
  differ(a: Cell, b: Cell): boolean;
  /** The digits that are ruled out, cell by cell; the reason must account for each. */
  readonly removes: ReadonlyMap<Cell, Digits>;
}

/**
 * What a rule could also mean where a puzzle doesn't say which reading it wants. It is given what the rule means to us and
 * says what it would mean then; all rules of its kind are read alike.
 */
export interface OtherReading<I extends Bound> {
  /** A clause: "digits in a cage may repeat". */
  readonly says: string;
  scopes(ours: readonly Scope[], instance: I & Named): readonly Scope[];
  terms(ours: readonly Term[], instance: I & Named): readonly Term[];
}

export type Relabels = "any" | "mirror" | "none";

/**
 * One kind of rule: one plain object, one file, one line in the registry; nothing outside its file names it.
 * `resolve` looks up everything the kind needs; every other member takes the instance only.
 */
// biome-ignore lint/suspicious/noExplicitAny: a registry holds kinds of every body and instance
export interface Kind<B extends Body = any, I extends Bound = any> {
  readonly name: string;
  readonly body: BodyShape<B>;
  /** What its mark on an edge counts as, where it draws one. */
  readonly edgeMark?: EdgeMark;
  /** The marks of whose absence it speaks, and that as a clause: "all dots are shown". Its body may be empty. */
  readonly missing?: { readonly mark: EdgeMark; readonly says: string };
  /**
   * By what else than its name and nouns a setter's own rules can be known to speak of it, in lower case: beginnings of
   * words, "..." standing for three words at most: "thermo", "all ... dot".
   */
  readonly alsoSaid?: readonly string[];
  /** What a viewer could take it to mean instead. */
  readonly readings?: readonly OtherReading<I>[];
  /** True where it binds whatever cells of its grids are looked at, and not a set of its own. */
  readonly wholeGrid?: boolean;
  resolve(body: B, setting: Setting): I | Faulty;
  scopes(instance: I & Named): readonly Scope[];
  terms(instance: I & Named): readonly Term[];
  marks(instance: I & Named): readonly Shape[];
  words(instance: I & Named): Words;
  /**
   * Why the clue rules out what is asked, where that can be said truly and in a clause: "the other two make at least 9".
   * English, in lower case, the clue itself not named; true of `asked` alone. Undefined: there is no such reason.
   */
  because?(instance: I & Named, asked: Asked): string | undefined;
  /** Whether digits may be renamed, or mirrored (greatest + least - d), under it. */
  readonly relabels: Relabels;
  /** Its digits count rows or columns, so that a mirrored puzzle would say something else. */
  readonly countsPlaces?: true;
  /** The instance binds nothing and every verdict says that it leaves it out. */
  leftOut?(instance: I & Named): boolean;
}
