import { digitsAt, placesIn } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry) => {
  const { by = 2 } = entry.body as { by?: number };
  const both = digitsAt(placesIn(entry));
  return `:- ${both}, A0 != ${by}*A1, A1 != ${by}*A0.\n:- ${both}, A0*A1 = 0.`;
};
