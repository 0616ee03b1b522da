import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

/** `cut(J)`: the first J cells split into runs that each have the sum. */
export const oracle: Oracle = (entry, { n }) => {
  const { sum } = entry.body as unknown as { sum: number };
  const [line, cut] = [`line${n}`, `cut${n}`];
  const places = placesIn(entry);
  return [
    alongAs(line, places),
    `${cut}(0).`,
    `${cut}(J) :- ${cut}(I), J = I+1..${places.length}, #sum { D,K : ${line}(K,D), K >= I, K < J } = ${sum}.`,
    `:- not ${cut}(${places.length}).`,
  ].join("\n");
};
