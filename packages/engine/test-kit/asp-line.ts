import type { Place } from "../src/puzzle/canvas.ts";

/** `name(K,D)`: cell K of the line, from 0, has digit D. */
export const alongAs = (name: string, places: readonly Place[]): string =>
  places.map(({ row, column }, k) => `${name}(${k},D) :- v(${row},${column},D).`).join(" ");

/** In every `size` cells in a row of the line, each of the classes 0 to size - 1 occurs; `name_of(D,Q)` gives the classes. */
export const inEveryWindow = (name: string, size: number, length: number): string =>
  [
    `${name}_has(W,Q) :- ${name}(K,D), ${name}_of(D,Q), W = K-${size - 1}..K.`,
    `:- W = 0..${length - size}, Q = 0..${size - 1}, not ${name}_has(W,Q).`,
  ].join("\n");
