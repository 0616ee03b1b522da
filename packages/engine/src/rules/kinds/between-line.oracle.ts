import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const line = `line${n}`;
  const places = placesIn(entry);
  const last = places.length - 1;
  return [
    alongAs(line, places),
    `:- ${line}(0,A), ${line}(${last},B), ${line}(K,D), K > 0, K < ${last}, D <= A, D <= B.`,
    `:- ${line}(0,A), ${line}(${last},B), ${line}(K,D), K > 0, K < ${last}, D >= A, D >= B.`,
  ].join("\n");
};
