import type { Point } from "@solvewright/engine";
import type { Extent } from "../scene/extent.ts";
import type { Figure } from "../scene/figure.ts";
import { wrapped } from "../scene/letters.ts";
import { movedTo } from "../scene/moved.ts";
import { figuresOfShape } from "./clues.ts";
import type { Clue } from "./subject.ts";

const size = 0.34;
const line = 0.46;
const sign = 0.42;
const weight = 600;

const signOf = (clue: Clue, at: Point): Figure[] =>
  clue.shapes
    .filter(({ layer }) => layer === "sign")
    .flatMap((shape) => figuresOfShape(shape, clue, () => "page"))
    .map((figure) => movedTo(figure, at, sign));

/** Rules whose drawing does not say them: of the whole grid, and those that bring a sign for their sentence. */
const isSaid = ({ wholeGrid, shapes }: Clue): boolean => wholeGrid || shapes.some(({ layer }) => layer === "sign");

/** Of a whole-grid rule its first sentence, which names it; a setter's own in full. */
const said = ({ wholeGrid, words }: Clue): string =>
  ((wholeGrid && /^.*?[.!?](?=\s)/su.exec(words.rule)?.[0]) || words.rule).replaceAll("'", "’");

/** Sentences under the board, each beside its sign. */
export const sentenceFigures = (clues: readonly Clue[], { left, right, bottom }: Extent): Figure[] => {
  let top = bottom + 0.4;
  return clues.filter(isSaid).flatMap((clue) => {
    const signs = signOf(clue, [left, top]);
    const start = left + (signs.length > 0 ? sign + 0.16 : 0);
    const lines = wrapped(said(clue), weight, Math.max(4, right - start) / size);
    const texts = lines.map((text, k): Figure => {
      const at: Point = [start, top + sign / 2 + size * 0.26 + k * line];
      return { shape: "text", layer: "sentence", at, text, size, weight, anchor: "start", fill: "ink" };
    });
    top += Math.max(sign, lines.length * line) + 0.16;
    return [...signs, ...texts];
  });
};
