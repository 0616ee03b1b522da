import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { grids: ids } = entry.body as { grids?: readonly string[] };
  const grids = puzzle.grids.filter(({ id, box }) => box && (!ids || ids.includes(id)));
  const places = grids.map(({ id, row, column, size, box }) => {
    const inside = `cell(R,C), R >= ${row}, R < ${row + size}, C >= ${column}, C < ${column + size}`;
    return `place${n}("${id}",(R-${row}) \\ ${box!.rows},(C-${column}) \\ ${box!.columns},R,C) :- ${inside}.`;
  });
  const rule = `:- place${n}(G,I,J,R,C), place${n}(G,I,J,S,E), (R,C) < (S,E), v(R,C,D), v(S,E,D).`;
  return [...places, rule].join("\n");
};
