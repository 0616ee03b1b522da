import { digitsAlong, lineFacts } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { sees } = entry.body as unknown as { sees: number };
  return `
${lineFacts(entry, puzzle, `line${n}`)}
${digitsAlong(`line${n}`, `at${n}`)}
hidden${n}(I) :- at${n}(I,D), at${n}(J,E), J < I, E >= D.
:- #count { I : line${n}(I,_,_), not hidden${n}(I) } != ${sees}.`;
};
