import { placesIn } from "../../../test-kit/asp.ts";
import { noRepeats, setOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { product } = entry.body as unknown as { product: number };
  const places = placesIn(entry);
  const steps = places.map(
    ({ row, column }, k) => `so${n}(${k + 1},P*D) :- so${n}(${k},P), v(${row},${column},D), P*D <= ${product}.`,
  );
  const some = places.map(({ row, column }) => `zero${n} :- v(${row},${column},0).`);
  const multiplies =
    product === 0
      ? [...some, `:- not zero${n}.`]
      : [`so${n}(0,1).`, ...steps, `:- not so${n}(${places.length},${product}).`];
  return [setOf(`cage${n}`, places), noRepeats(`cage${n}`), ...multiplies].join("\n");
};
