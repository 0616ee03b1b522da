import { digitsAt, placesIn } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry) => {
  const { by = 1 } = entry.body as { by?: number };
  return `:- ${digitsAt(placesIn(entry))}, |A0-A1| != ${by}.`;
};
