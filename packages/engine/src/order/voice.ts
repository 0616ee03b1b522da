import type { Board } from "../board/board.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { nameSaid } from "../speech/english/trade-names.ts";
import { isFeaturedBy, type Wish } from "./wishes/wish.ts";

/** A pattern's name, said after its reason where it comes up for the first time in a show. */
export interface Naming {
  readonly say: string;
  /** The audience has never met it. */
  readonly isFirst: boolean;
}

/** With what a show is told. */
export interface Voice {
  readonly board: Board;
  readonly namings: ReadonlyMap<Deduction, Naming>;
  /** Steps that the presenter wants featured: each in a beat of its own, with an invitation to pause. */
  readonly featured: ReadonlySet<Deduction>;
  /** The presenter's own words, by the step that settles the cell; that beat is left alone too. */
  readonly words: ReadonlyMap<Deduction, string>;
}

const settling = (board: Board, steps: readonly Deduction[], name: string): Deduction | undefined => {
  const cell = cellNamed(board.canvas, name);
  return steps.find(({ places }) => cell !== undefined && places.has(cell));
};

const featuredBy = (board: Board, steps: readonly Deduction[], wish: Wish): Deduction | undefined => {
  if (wish.wish !== "feature") return undefined;
  return "cell" in wish ? settling(board, steps, wish.cell) : steps.find((step) => isFeaturedBy(wish, step));
};

/** `met`: rule kinds and techniques, by their names, that the audience has met in earlier shows. */
export const voiceOf = (
  board: Board,
  steps: readonly Deduction[],
  met: readonly string[],
  wishes: readonly Wish[],
): Voice => {
  const namings = new Map<Deduction, Naming>();
  const said = new Set<string>();
  for (const step of steps) {
    if (said.has(step.technique)) continue;
    said.add(step.technique);
    const isFirst = !met.includes(step.technique);
    const say = nameSaid(step.technique, !isFirst);
    if (say !== undefined) namings.set(step, { say, isFirst });
  }
  const featured = wishes.map((wish) => featuredBy(board, steps, wish)).filter((step) => step !== undefined);
  const words = wishes.flatMap((wish): [Deduction, string][] => {
    const step = wish.wish === "words" ? settling(board, steps, wish.cell) : undefined;
    return wish.wish === "words" && step ? [[step, wish.say]] : [];
  });
  return { board, namings, featured: new Set(featured), words: new Map(words) };
};
