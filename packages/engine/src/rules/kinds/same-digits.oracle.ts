import { setOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { areas } = entry.body as unknown as { areas: readonly (readonly Place[])[] };
  const asOften = (k: number): string =>
    `#sum { 1,R,C,1 : area${n}_0(R,C), v(R,C,D) ; -1,R,C,2 : area${n}_${k}(R,C), v(R,C,D) }`;
  const others = areas.slice(1).map((_, k) => `:- D = 0..31, ${asOften(k + 1)} != 0.`);
  return [...areas.map((places, k) => setOf(`area${n}_${k}`, places)), ...others].join("\n");
};
