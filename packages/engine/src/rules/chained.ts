import { listOf } from "../board/digits.ts";
import { pairTerm } from "../terms/make.ts";
import type { Term } from "../terms/term.ts";
import type { Named, Scope, Setting } from "./contract.ts";
import { holding } from "./edge.ts";
import { type Line, stepsOf } from "./line.ts";

type Holds = (first: number, second: number) => boolean;

/** Every two neighbours on the line hold. */
export const chained = ({ cells }: Line, holds: Holds): Scope[] => stepsOf(cells).map((step) => holding(step, holds));
export const chainedTerms = ({ id, cells }: Line & Named, holds: Holds): Term[] =>
  stepsOf(cells).map((step) => pairTerm(id, step, holds));

/** Whether some digits of its cells do: what each can be after all before it. */
export const canChain = ({ cells }: Line, { domains }: Setting, holds: Holds): boolean => {
  let before: readonly number[] = listOf(domains[cells[0]!]!);
  for (const cell of cells.slice(1))
    before = listOf(domains[cell]!).filter((digit) => before.some((other) => holds(other, digit)));
  return before.length > 0;
};
