import { digitsAlong, gridOf, lineFacts } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { digits } = gridOf(entry, puzzle);
  const { sum } = entry.body as unknown as { sum: number };
  return `
${lineFacts(entry, puzzle, `line${n}`)}
${digitsAlong(`line${n}`, `at${n}`)}
low${n}(I) :- at${n}(I,${Math.min(...digits)}).
high${n}(I) :- at${n}(I,${Math.max(...digits)}).
:- #count { I : low${n}(I) } != 1.
:- #count { I : high${n}(I) } != 1.
inside${n}(I) :- low${n}(L), high${n}(H), line${n}(I,_,_), I > L, I < H.
inside${n}(I) :- low${n}(L), high${n}(H), line${n}(I,_,_), I > H, I < L.
:- #sum { D,I : inside${n}(I), at${n}(I,D) } != ${sum}.`;
};
