import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const line = `line${n}`;
  const places = placesIn(entry);
  const last = places.length - 1;
  return [
    alongAs(line, places),
    `:- #sum { D,K : ${line}(K,D), K > 0, K < ${last} ; -D,K : ${line}(K,D), K = 0 ; -D,K : ${line}(K,D), K = ${last} } != 0.`,
  ].join("\n");
};
