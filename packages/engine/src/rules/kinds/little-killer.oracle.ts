import { placesIn } from "../../../test-kit/asp.ts";
import { setOf, sumOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { sum } = entry.body as unknown as { sum: number };
  return `${setOf(`line${n}`, placesIn(entry))}\n:- ${sumOf(`line${n}`)} != ${sum}.`;
};
