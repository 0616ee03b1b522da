import { digitsAlong, gridOf, lineFacts } from "../../../test-kit/asp-outside.ts";
import type { Oracle } from "../../../test-kit/index.ts";

interface Keys {
  readonly row?: number;
  readonly digits: readonly number[];
  readonly within?: number;
}

export const oracle: Oracle = (entry, { puzzle, n }) => {
  const { row, digits, within } = entry.body as unknown as Keys;
  const { box, size } = gridOf(entry, puzzle);
  const depth = within ?? (box ? (row === undefined ? box.rows : box.columns) : Math.min(3, size));
  const wanted = [...new Set(digits)].map((digit) => {
    const times = digits.filter((other) => other === digit).length;
    return `:- #count { I : at${n}(I,${digit}), I <= ${depth} } < ${times}.`;
  });
  return [lineFacts(entry, puzzle, `line${n}`), digitsAlong(`line${n}`, `at${n}`), ...wanted].join("\n");
};
