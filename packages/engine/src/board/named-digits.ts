import type { Board } from "./board.ts";

/** A filling, its digits by `Cell`, in its outside form: by the names of cells. */
export const namedDigits = ({ canvas }: Pick<Board, "canvas">, filling: ArrayLike<number>): Record<string, number> =>
  Object.fromEntries(canvas.names.map((name, cell) => [name, filling[cell]!]));
