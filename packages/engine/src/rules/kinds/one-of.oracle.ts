import { placesIn } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry) => {
  const { digits } = entry.body as unknown as { digits: readonly number[] };
  const other = digits.map((digit) => `D != ${digit}`).join(", ");
  return placesIn(entry)
    .map(({ row, column }) => `:- v(${row},${column},D), ${other}.`)
    .join("\n");
};
