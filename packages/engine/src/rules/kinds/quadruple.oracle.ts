import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";

export const oracle: Oracle = (entry) => {
  const { at, digits } = entry.body as unknown as { at: Place; digits: readonly number[] };
  const [row, column] = [at.row, at.column];
  return [...new Set(digits)]
    .map((digit) => {
      const times = digits.filter((other) => other === digit).length;
      return `:- #count { R,C : v(R,C,${digit}), R = ${row}..${row + 1}, C = ${column}..${column + 1} } < ${times}.`;
    })
    .join("\n");
};
