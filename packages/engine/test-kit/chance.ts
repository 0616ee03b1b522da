import type { Filled } from "./kind-cases.ts";
import type { Random } from "./random.ts";

/** Two cells side by side whose digits hold, in either order, as the file names them; undefined where there are none. */
export const edgeWhere = (
  random: Random,
  board: Filled,
  holds: (first: number, second: number) => boolean,
): { readonly cells: string; readonly digits: readonly [number, number] } | undefined => {
  const steps = Array.from({ length: board.size }, (_, k) => k + 1);
  const edges = steps.flatMap((row) =>
    steps.flatMap((column) =>
      (
        [
          [0, 1],
          [1, 0],
          [0, -1],
          [-1, 0],
        ] as const
      ).map(([down, right]) => [row, column, row + down, column + right] as const),
    ),
  );
  for (const [row, column, row2, column2] of random.shuffled(edges)) {
    if (Math.min(row2, column2) < 1 || Math.max(row2, column2) > board.size) continue;
    const digits = [board.digit(row, column), board.digit(row2, column2)] as const;
    if (holds(...digits)) return { cells: `r${row}c${column} r${row2}c${column2}`, digits };
  }
  return undefined;
};

/** Whether any two cells of the board that are one of these steps down and right apart hold. */
export const everyWhere = (
  board: Filled,
  steps: readonly (readonly [number, number])[],
  holds: (first: number, second: number) => boolean,
): boolean => {
  for (let row = 1; row <= board.size; row++)
    for (let column = 1; column <= board.size; column++)
      for (const [down, right] of steps) {
        if (Math.min(row + down, column + right) < 1 || Math.max(row + down, column + right) > board.size) continue;
        if (!holds(board.digit(row, column), board.digit(row + down, column + right))) return false;
      }
  return true;
};
