import { placesIn } from "../../../test-kit/asp.ts";
import { noRepeats, setOf, sumOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { sum } = entry.body as { sum?: number };
  const name = `cage${n}`;
  const adds = sum === undefined ? "" : `:- ${sumOf(name)} != ${sum}.`;
  return `${setOf(name, placesIn(entry))} ${noRepeats(name)} ${adds}`;
};
