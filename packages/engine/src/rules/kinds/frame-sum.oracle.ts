import { digitsAlong, gridOf, lineFacts } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { sum, over } = entry.body as unknown as { sum: number; over?: number };
  return `
${lineFacts(entry, puzzle, `line${n}`)}
${digitsAlong(`line${n}`, `at${n}`)}
:- #sum { D,I : at${n}(I,D), I <= ${over ?? Math.min(3, gridOf(entry, puzzle).size)} } != ${sum}.`;
};
