import { digitsAlong, gridOf, lineFacts } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { sum } = entry.body as unknown as { sum: number };
  return `
${lineFacts(entry, puzzle, `line${n}`)}
${digitsAlong(`line${n}`, `at${n}`)}
:- at${n}(1,X), X > ${gridOf(entry, puzzle).size}.
:- at${n}(1,X), #sum { D,I : at${n}(I,D), I <= X } != ${sum}.`;
};
