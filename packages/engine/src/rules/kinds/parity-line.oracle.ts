import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const line = `line${n}`;
  return `${alongAs(line, placesIn(entry))}\n:- ${line}(K,A), ${line}(K+1,B), (A+B) \\ 2 = 0.`;
};
