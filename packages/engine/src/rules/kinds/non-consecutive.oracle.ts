import { insideOf } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => `
${insideOf(entry, puzzle, `inside${n}`)}
:- inside${n}(R,C), inside${n}(S,E), |R-S| + |C-E| = 1, v(R,C,D), v(S,E,D+1).`;
