import type { Place } from "../src/puzzle/canvas.ts";
import type { Puzzle, RuleEntry } from "../src/puzzle/puzzle.ts";

/** The digits of these cells as variables, `v(1,1,A0), v(1,2,A1)`, named by the letter and the place in the list. */
export const digitsAt = (places: readonly Place[], letter = "A"): string =>
  places.map(({ row, column }, k) => `v(${row},${column},${letter}${k})`).join(", ");

/** The places of a rule's cells. */
export const placesIn = (entry: RuleEntry): readonly Place[] =>
  (entry.body as { cells?: readonly Place[] }).cells ?? [];

/** `name(R,C)` of every cell of the grids that a whole-grid rule names, or of all. */
export const insideOf = (entry: RuleEntry, puzzle: Puzzle, name: string): string => {
  const { grids: ids } = entry.body as { grids?: readonly string[] };
  return puzzle.grids
    .filter(({ id }) => !ids || ids.includes(id))
    .map(({ row, column, size }) => {
      const [last, right] = [row + size - 1, column + size - 1];
      return `${name}(R,C) :- cell(R,C), R >= ${row}, R <= ${last}, C >= ${column}, C <= ${right}.`;
    })
    .join("\n");
};

/** `name(R,C,S,E)` of every edge that bears a mark of one of these kinds, whichever way round it is listed. */
export const markedBy = (kinds: readonly string[], puzzle: Puzzle, name: string): string =>
  [
    // Without any the solver would warn that nothing is ever marked.
    `${name}(0,0,0,0).`,
    ...puzzle.rules
      .filter(({ kind }) => kinds.includes(kind))
      .flatMap((rule) => {
        const [a, b] = placesIn(rule);
        const [from, to] = [`${a!.row},${a!.column}`, `${b!.row},${b!.column}`];
        return [`${name}(${from},${to}).`, `${name}(${to},${from}).`];
      }),
  ].join("\n");
