import { digitsAt, placesIn } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry) => `:- ${digitsAt(placesIn(entry))}, A0+A1 != 10.`;
