import type { Grid, Puzzle, RuleEntry } from "../src/puzzle/puzzle.ts";

interface LineKeys {
  readonly grid?: string;
  readonly row?: number;
  readonly column?: number;
  readonly from?: string;
}

/** The grid of an outside clue: the one named, or the only one with so many lines. */
export const gridOf = (entry: RuleEntry, puzzle: Puzzle): Grid => {
  const { grid, row, column } = entry.body as LineKeys;
  return puzzle.grids.find(({ id, size }) => (grid === undefined ? (row ?? column)! <= size : id === grid))!;
};

/** `name(I,R,C)`: the clue's line, I counting from 1 at the side it is read from, left or top where none is said. */
export const lineFacts = (entry: RuleEntry, puzzle: Puzzle, name: string): string => {
  const { row, column, from } = entry.body as LineKeys;
  const grid = gridOf(entry, puzzle);
  const isBack = from === "right" || from === "bottom";
  const facts: string[] = [];
  for (let k = 0; k < grid.size; k++) {
    const place = isBack ? grid.size - k : k + 1;
    if (row === undefined) facts.push(`${name}(${place},${grid.row + k},${grid.column + column! - 1}).`);
    else facts.push(`${name}(${place},${grid.row + row - 1},${grid.column + k}).`);
  }
  return facts.join(" ");
};

/** `name(I,D)`: the digit D stands at I of the line whose cells `line` names. */
export const digitsAlong = (line: string, name: string): string => `${name}(I,D) :- ${line}(I,R,C), v(R,C,D).`;
