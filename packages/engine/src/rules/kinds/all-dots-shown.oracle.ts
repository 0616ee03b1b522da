import { insideOf, markedBy } from "../../../test-kit/asp.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => `
${insideOf(entry, puzzle, `inside${n}`)}
${markedBy(["kropke-black", "kropke-white"], puzzle, `marked${n}`)}
bare${n}(A,B) :- inside${n}(R,C), inside${n}(S,E), |R-S|+|C-E| = 1, not marked${n}(R,C,S,E), v(R,C,A), v(S,E,B).
:- bare${n}(A,B), |A-B| = 1.
:- bare${n}(A,B), A > 0, B = 2*A.`;
