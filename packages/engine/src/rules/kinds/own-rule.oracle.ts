import { placesIn } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { allows } = entry.body as { allows?: readonly (readonly number[])[] };
  if (!allows) return "";
  const rows = allows.map(
    (row) =>
      `row${n} :- ${placesIn(entry)
        .map(({ row: r, column }, k) => `v(${r},${column},${row[k]})`)
        .join(", ")}.`,
  );
  return [...rows, `:- not row${n}.`].join("\n");
};
