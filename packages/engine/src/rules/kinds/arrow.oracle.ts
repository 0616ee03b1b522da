import { alongAs } from "../../../test-kit/asp-line.ts";
import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";

/** Cell K of a total of three counts 100, 10 or 1 times. */
export const oracle: Oracle = (entry, { n }) => {
  const { total, along } = entry.body as unknown as { total: readonly Place[]; along: readonly Place[] };
  const [shaft, pill] = [`shaft${n}`, `pill${n}`];
  const places = total.map((_, k) => `${pill}_worth(${k},${["1", "10", "100"][total.length - 1 - k]}).`);
  return [
    alongAs(shaft, along),
    alongAs(pill, total),
    places.join(" "),
    `:- #sum { D,shaft,K : ${shaft}(K,D) ; -D*W,pill,K : ${pill}(K,D), ${pill}_worth(K,W) } != 0.`,
  ].join("\n");
};
