import type { Puzzle } from "./puzzle.ts";
import type { Reading } from "./read.ts";

/** The puzzle, where nothing is wrong with it. */
export const accept = ({ draft, problems }: Reading): Puzzle | undefined =>
  problems.length > 0 ? undefined : { ...draft, accepted: true };
