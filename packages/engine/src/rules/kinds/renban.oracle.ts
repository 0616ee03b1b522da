import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

/** The run starts at one digit; every cell lies in it, and none repeats. */
export const oracle: Oracle = (entry, { n }) => {
  const [line, low] = [`line${n}`, `low${n}`];
  const places = placesIn(entry);
  return [
    alongAs(line, places),
    `1 { ${low}(0..31) } 1.`,
    `:- ${low}(S), ${line}(_,D), D < S.`,
    `:- ${low}(S), ${line}(_,D), D >= S+${places.length}.`,
    `:- ${line}(K,D), ${line}(J,D), K < J.`,
  ].join("\n");
};
