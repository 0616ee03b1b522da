import { placesIn } from "../../../test-kit/asp.ts";
import { alongAs, inEveryWindow } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { by = 3 } = entry.body as { by?: number };
  const line = `line${n}`;
  const places = placesIn(entry);
  return [
    alongAs(line, places),
    `${line}_of(D, D \\ ${by}) :- D = 0..31.`,
    inEveryWindow(line, by, places.length),
  ].join("\n");
};
