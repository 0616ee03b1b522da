import { placesIn } from "../../../test-kit/asp.ts";
import { setOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => `
${setOf(`ring${n}`, placesIn(entry))}
:- ring${n}(R,C), v(R,C,D), #count { S,E : ring${n}(S,E), v(S,E,D) } != D.`;
