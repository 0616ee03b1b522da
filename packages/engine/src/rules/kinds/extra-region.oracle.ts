import { placesIn } from "../../../test-kit/asp.ts";
import { noRepeats, setOf } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { n }) => `${setOf(`area${n}`, placesIn(entry))} ${noRepeats(`area${n}`)}`;
