import { placesIn } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry) =>
  placesIn(entry)
    .map(({ row, column }) => `:- v(${row},${column},D), D \\ 2 != 1.`)
    .join("\n");
