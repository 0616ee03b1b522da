import type { Board, Draft, Place, RuleInstance, Shape, Words } from "@solvewright/engine";
import { placeOf } from "@solvewright/engine";

/** What is drawn: a puzzle and its rules with everything looked up. A `Board` is one; so is a draft with what of it can be resolved. */
export interface Subject {
  readonly puzzle: Draft;
  readonly rules: readonly Pick<RuleInstance, "id" | "kind" | "instance">[];
}

/** One rule of the picture. */
export interface Clue {
  readonly id: string;
  readonly shapes: readonly Shape[];
  readonly words: Words;
  readonly wholeGrid: boolean;
  readonly cells: readonly Place[];
  readonly tint?: string;
}

export const cluesOf = ({ puzzle, rules }: Subject): Clue[] => {
  const tints = new Map(puzzle.rules.map(({ id, body }) => [id, body.tint]));
  return rules.map(({ id, kind, instance }) => {
    const tint = tints.get(id);
    return {
      id,
      shapes: kind.marks(instance),
      words: kind.words(instance),
      wholeGrid: kind.wholeGrid ?? false,
      cells: instance.cells.map((cell) => puzzle.canvas.places[cell]!),
      ...(tint ? { tint } : {}),
    };
  });
};

/** The place of a cell by its name in files: r1c1. */
export const placeNamed = (name: string): Place => {
  const place = placeOf(name);
  if (!place) throw new Error(`${name} is no cell's name`);
  return place;
};

export const placesNamed = (names: readonly string[]): Place[] => names.map(placeNamed);

/** The cells of a house or a rule, by its id. */
export const placesOf = (board: Board, id: string): Place[] => {
  const cells = board.house(id)?.cells ?? board.rule(id)?.cells ?? [];
  return cells.map((cell) => board.canvas.places[cell]!);
};
