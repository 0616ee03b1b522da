import { setOf, sumLess } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { areas } = entry.body as unknown as { areas: readonly (readonly Place[])[] };
  const others = areas.slice(1).map((_, k) => `:- ${sumLess(`area${n}_0`, `area${n}_${k + 1}`)} != 0.`);
  return [...areas.map((places, k) => setOf(`area${n}_${k}`, places)), ...others].join("\n");
};
