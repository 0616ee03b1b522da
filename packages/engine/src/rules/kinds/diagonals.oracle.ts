import type { Oracle } from "../../../test-kit/index.ts";

interface Keys {
  readonly grids?: readonly string[];
  readonly which?: "down" | "up" | "both";
}

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { grids: ids, which = "both" } = entry.body as Keys;
  const lines = puzzle.grids
    .filter(({ id }) => !ids || ids.includes(id))
    .flatMap(({ id, row, column, size }) => {
      const inside = `cell(R,C), R >= ${row}, R < ${row + size}, C >= ${column}, C < ${column + size}`;
      const down = `on${n}("${id}",down,R,C) :- ${inside}, R - ${row} = C - ${column}.`;
      const up = `on${n}("${id}",up,R,C) :- ${inside}, R - ${row} + C - ${column} = ${size - 1}.`;
      return which === "down" ? [down] : which === "up" ? [up] : [down, up];
    });
  return [...lines, `:- on${n}(G,W,R,C), on${n}(G,W,S,E), R < S, v(R,C,D), v(S,E,D).`].join("\n");
};
