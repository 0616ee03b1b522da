import type { Board } from "../../board/board.ts";
import type { Knowledge } from "../../board/knowledge.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Part } from "../line.ts";
import type { Nouns } from "./nouns.ts";

/** A deduction with the state just before it and the words to say it with. */
export interface Telling {
  readonly deduction: Deduction;
  readonly before: Knowledge;
  readonly nouns: Nouns;
  readonly board: Board;
  /** The step before in the same breath. */
  readonly previous?: Deduction;
}

/** The sentence or two of one technique. */
export type Phrase = (telling: Telling) => Part[];

export const namesOf = (board: Board, cells: readonly Cell[]): string[] =>
  cells.map((cell) => board.canvas.names[cell]!);
