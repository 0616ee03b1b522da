import { insideOf, markedBy } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => `
${insideOf(entry, puzzle, `inside${n}`)}
${markedBy(["xv-x", "xv-v"], puzzle, `marked${n}`)}
bare${n}(A,B) :- inside${n}(R,C), inside${n}(S,E), |R-S|+|C-E| = 1, not marked${n}(R,C,S,E), v(R,C,A), v(S,E,B).
:- bare${n}(A,B), A+B = 5.
:- bare${n}(A,B), A+B = 10.`;
