import { placesIn } from "../../../test-kit/asp.ts";
import { setOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => `
${setOf(`here${n}`, placesIn(entry))}
:- here${n}(R,C), v(R,C,D), v(S,E,F), |R-S| + |C-E| = 1, F <= D.`;
