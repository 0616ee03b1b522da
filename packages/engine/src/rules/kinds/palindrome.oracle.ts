import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const line = `line${n}`;
  const places = placesIn(entry);
  const last = places.length - 1;
  return [alongAs(line, places), `:- ${line}(K,A), ${line}(${last}-K,B), A != B.`].join("\n");
};
