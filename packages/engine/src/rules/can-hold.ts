import { digitsOf, has } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { matchingOf } from "../terms/matching.ts";
import type { Setting } from "./contract.ts";

/** Whether the cells can hold all these digits at once, each as often as it is named, houses left aside. */
export const canHold = (cells: readonly Cell[], digits: readonly number[], { domains }: Setting): boolean => {
  const matching = matchingOf(digits.length);
  for (const [k, digit] of digits.entries())
    matching.options[k] = digitsOf(cells.flatMap((cell, j) => (has(domains[cell]!, digit) ? [j] : [])));
  return matching.run();
};
