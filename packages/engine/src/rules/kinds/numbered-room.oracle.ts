import { digitsAlong, lineFacts } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { digit } = entry.body as unknown as { digit: number };
  return `
${lineFacts(entry, puzzle, `line${n}`)}
${digitsAlong(`line${n}`, `at${n}`)}
:- at${n}(1,N), not at${n}(N,${digit}).`;
};
