import { type Position, positionsIn } from "./lines.ts";
import type { Problem } from "./puzzle.ts";
import type { Spot, Tell } from "./tree.ts";

/** A file with more faults than this has its first ones told. */
export const mostProblems = 100;

interface Told {
  readonly spot: Spot;
  readonly read: string;
  readonly right: string;
}

/** What is told of a text: `tell` takes it, `problems` gives it back in the order of the text. */
export interface Telling {
  readonly tell: Tell;
  problems(source: string): Problem[];
}

const asProblems = (told: readonly Told[], position: (offset: number) => Position): Problem[] =>
  [...told]
    .sort((a, b) => a.spot.from - b.spot.from)
    .slice(0, mostProblems)
    .map(({ spot, read, right }) => ({ ...position(spot.from), read, right, path: spot.path }));

export const telling = (): Telling => {
  const told: Told[] = [];
  return {
    tell: (spot, read, right) => void told.push({ spot, read, right }),
    problems: (source) => asProblems(told, positionsIn(source)),
  };
};

/** A text as its places are counted: without a byte order mark; a lone CR ends a line too, LF in its place keeps every offset. */
export const sourceOf = (text: string): string => text.replace(/^\ufeff/, "").replace(/\r(?!\n)/g, "\n");
