import { gridOf } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { row, column } = entry.body as { row?: number; column?: number };
  const grid = gridOf(entry, puzzle);
  const facts = [`top${n}(${grid.row - 1}).`, `left${n}(${grid.column - 1}).`, `place${n}(1..${grid.size}).`];
  const rule =
    row === undefined
      ? `:- top${n}(T), left${n}(L), place${n}(K), v(T+K,L+${column},D), not v(T+K,L+D,${column}).`
      : `:- top${n}(T), left${n}(L), place${n}(K), v(T+${row},L+K,D), not v(T+D,L+K,${row}).`;
  return [...facts, rule].join("\n");
};
