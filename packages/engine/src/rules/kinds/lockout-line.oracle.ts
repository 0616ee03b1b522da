import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { by = 4 } = entry.body as { by?: number };
  const line = `line${n}`;
  const places = placesIn(entry);
  const last = places.length - 1;
  const ends = `${line}(0,A), ${line}(${last},B)`;
  const between = `${line}(K,D), K > 0, K < ${last}`;
  return [
    alongAs(line, places),
    `:- ${ends}, |A-B| < ${by}.`,
    `:- ${ends}, ${between}, A <= D, D <= B.`,
    `:- ${ends}, ${between}, B <= D, D <= A.`,
  ].join("\n");
};
