import type { Oracle } from "../../../test-kit/index.ts";

/** The windows are rows 2 to 4 and 6 to 8 of the grid, crossed with the same columns. */
export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { grids: ids } = entry.body as { grids?: readonly string[] };
  const grids = puzzle.grids.filter(({ id, size }) => size === 9 && (!ids || ids.includes(id)));
  const panes = grids.map(
    ({ id, row, column }) =>
      `pane${n}("${id}",A,B,${row - 1}+A+I,${column - 1}+B+J) :- A=(2;6), B=(2;6), I=0..2, J=0..2.`,
  );
  return [...panes, `:- pane${n}(G,A,B,R,C), pane${n}(G,A,B,S,E), (R,C) < (S,E), v(R,C,D), v(S,E,D).`].join("\n");
};
