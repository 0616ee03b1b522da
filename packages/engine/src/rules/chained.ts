import { pairTerm } from "../terms/make.ts";
import type { Term } from "../terms/term.ts";
import type { Named, Scope, Setting } from "./contract.ts";
import { holding } from "./edge.ts";
import { isFeasible } from "./feasible.ts";
import { type Line, stepsOf } from "./line.ts";

type Holds = (first: number, second: number) => boolean;

/** Every two neighbours on the line hold. */
export const chained = ({ cells }: Line, holds: Holds): Scope[] => stepsOf(cells).map((step) => holding(step, holds));
export const chainedTerms = ({ id, cells }: Line & Named, holds: Holds): Term[] =>
  stepsOf(cells).map((step) => pairTerm(id, step, holds));

/** Whether some digits of its cells do. */
export const canChain = (line: Line, setting: Setting, holds: Holds): boolean =>
  isFeasible(chained(line, holds), setting);
