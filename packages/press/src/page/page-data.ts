import type { Grid, House, Place, RuleEntry, Shape } from "@solvewright/engine";

/** The puzzle as the page's helper reasons about it: the accepted draft in plain JSON, without consents and words. */
export interface PuzzleData {
  readonly title: string;
  readonly grids: readonly Grid[];
  /** By cell name. */
  readonly givens: Readonly<Record<string, number>>;
  readonly rules: readonly RuleEntry[];
}

export interface CellData {
  /** "row 2, column 4 of the yard"; of a shared cell every name that it has. */
  readonly said: string;
  /** The clues that it bears, as they are heard: "cage of 13", "renban line, 2 of 4". */
  readonly clues: readonly string[];
}

export interface HouseData extends Pick<House, "id" | "shape" | "grid"> {
  readonly cells: readonly string[];
  /** "row 3 of the mill". */
  readonly said: string;
}

export interface ClueData {
  readonly id: string;
  readonly wholeGrid: boolean;
  readonly cells: readonly string[];
  readonly shapes: readonly Shape[];
  readonly tint?: string;
}

/** One sentence of the rules and the clues that it speaks of. */
export interface RuleText {
  readonly title: string;
  readonly say: string;
  readonly ids: readonly string[];
  readonly notes: readonly string[];
}

/** Where the video can be watched, and when in it a cell was settled, in seconds through the edit. No digit is in it. */
export interface MomentsData {
  /** A web address in which `{seconds}` stands for the time. */
  readonly address: string;
  /** By cell name. */
  readonly cells: Readonly<Record<string, number>>;
}

/** The show that the page goes with. */
export interface ShowData {
  readonly name: string;
  readonly date?: string;
  readonly link?: string;
  /** Where there is a take. */
  readonly moments?: MomentsData;
}

/**
 * What a try-it page is told of its puzzle: everything that is drawn and said, worked out beforehand, so that the page
 * can draw it before its helper is ready. No solution is in it.
 */
export interface PageData {
  readonly page: 1;
  readonly fingerprint: string;
  /** The fingerprint that the puzzle had before it was corrected. */
  readonly formerly?: string;
  readonly puzzle: PuzzleData;
  readonly setters: readonly { readonly name: string; readonly link?: string }[];
  readonly wording?: string;
  readonly notes?: string;
  readonly places: readonly Place[];
  /** By cell, in the order of `places`. */
  readonly cells: readonly CellData[];
  readonly houses: readonly HouseData[];
  /** Cells that a rule keeps from repeating a digit without being a house. */
  readonly groups: readonly (readonly string[])[];
  readonly clues: readonly ClueData[];
  readonly rules: readonly RuleText[];
  /** What a pair without a mark means, where the rules leave it open. */
  readonly missing: readonly string[];
  /** Rules that are sentences only, so that nobody but the solver keeps them. */
  readonly unchecked: readonly string[];
  readonly show?: ShowData;
}
