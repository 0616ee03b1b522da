import type { Place } from "../src/puzzle/canvas.ts";

/** `name(R,C)` of each of these cells. */
export const setOf = (name: string, places: readonly Place[]): string =>
  places.map(({ row, column }) => `${name}(${row},${column}).`).join(" ");

/** No digit stands twice in the set. */
export const noRepeats = (name: string): string => `:- ${name}(R,C), ${name}(S,E), (R,C) < (S,E), v(R,C,D), v(S,E,D).`;

/** What the digits of the set add up to, for use in a rule: `#sum { ... }`. */
export const sumOf = (name: string): string => `#sum { D,R,C : ${name}(R,C), v(R,C,D) }`;

/** The sum of the first set less that of the second. */
export const sumLess = (first: string, second: string): string =>
  `#sum { D,R,C,1 : ${first}(R,C), v(R,C,D) ; -D,R,C,2 : ${second}(R,C), v(R,C,D) }`;
