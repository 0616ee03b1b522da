import { filledOf, filling } from "./filled-grid.ts";
import type { DrawnBoard } from "./kind-cases.ts";
import type { Random } from "./random.ts";

/** The rule that marks an edge between such digits, where one does. */
type Marking = (first: number, second: number) => string | undefined;

const edgesOf = (size: number): (readonly [number, number, number, number])[] =>
  Array.from({ length: size * size }, (_, k) => [1 + Math.floor(k / size), 1 + (k % size)] as const).flatMap(
    ([row, column]) => [
      ...(column < size ? [[row, column, row, column + 1] as const] : []),
      ...(row < size ? [[row, column, row + 1, column] as const] : []),
    ],
  );

/** A grid of 4 or 6 that bears every mark of some filling, with the rule that no other edge could have one. */
export const withAllMarks = (random: Random, rule: string, marking: Marking): DrawnBoard => {
  const size = random.pick([4, 6]);
  const { digit } = filledOf(size, filling(random, size));
  const marks = edgesOf(size).flatMap(([row, column, row2, column2]) => {
    const kind = marking(digit(row, column), digit(row2, column2));
    return kind === undefined ? [] : [`${kind}: r${row}c${column} r${row2}c${column2}`];
  });
  return { grid: `size: ${size}`, rules: [rule, ...marks] };
};
