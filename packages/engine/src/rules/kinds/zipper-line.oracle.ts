import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const line = `line${n}`;
  const places = placesIn(entry);
  const last = places.length - 1;
  const pair = `${line}(K,A), ${line}(${last}-K,B), K < ${last}-K`;
  const same =
    last % 2 === 0
      ? `:- ${pair}, ${line}(${last / 2},M), A+B != M.`
      : `:- ${pair}, ${line}(0,C), ${line}(${last},D), A+B != C+D.`;
  return `${alongAs(line, places)}\n${same}`;
};
