import type { Canvas, Ink, Layer, Point, Shape } from "@solvewright/engine";
import type { Paint } from "../colours.ts";
import { extentOf, middleOf } from "../scene/extent.ts";
import type { Figure, LayerName } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import { sheetAt } from "./sheets.ts";
import type { Clue } from "./subject.ts";

type GroundAt = (point: Point) => Paint;

const tinted: ReadonlySet<Ink> = new Set(["clue", "clue-edge", "clue-ink"]);

const paintOf = (ink: Ink, tint: string | undefined): Paint =>
  tint !== undefined && tinted.has(ink) ? { colour: ink, tint } : ink;

const lookOf = ({ fill, stroke, opacity }: Shape, tint: string | undefined) => ({
  ...(fill === undefined ? {} : { fill: paintOf(fill, tint) }),
  ...(stroke === undefined ? {} : { pen: { ...stroke, paint: paintOf(stroke.ink, tint), join: "round" as const } }),
  ...(opacity === undefined ? {} : { opacity }),
});

const bare = (shape: Shape, layer: LayerName, tint: string | undefined): Figure => {
  const look = { layer, ...lookOf(shape, tint) };
  switch (shape.shape) {
    case "line": {
      const { points, round, closed } = shape;
      const path = { points, ...(round === undefined ? {} : { round }), ...(closed === undefined ? {} : { closed }) };
      return { ...look, shape: "paths", paths: [path] };
    }
    case "disc":
      return { ...look, shape: "disc", at: shape.at, radius: shape.radius };
    case "box": {
      const { at, width, height, round } = shape;
      return { ...look, shape: "box", at, width, height, ...(round === undefined ? {} : { round }) };
    }
    case "text": {
      const { at, text, size, weight = 700, anchor = "middle" } = shape;
      return { ...look, shape: "text", at, text, size, weight, anchor };
    }
  }
};

/** A plate behind a text that covers the dashes beside it whole. */
const plateBehind = (text: Figure, fill: Paint): Figure => {
  const { left, top, right, bottom } = extentOf(text);
  const [width, height] = [right - left + 0.08, bottom - top + 0.08];
  return {
    shape: "box",
    layer: text.layer,
    at: middleOf({ left, top, right, bottom }),
    width,
    height,
    round: 0.04,
    fill,
  };
};

/**
 * What stands for the sheet is painted as the sheet that lies there. A text with a plate clears the ground behind: a
 * plate among the cages, whose dashes it would cut, else a clear band round its strokes.
 */
const grounded = (shape: Shape, figure: Figure, groundAt: GroundAt): Figure[] => {
  const ground = groundAt(middleOf(extentOf(figure)));
  if (shape.shape === "text" && shape.plate && figure.shape === "text")
    return shape.layer === "cage"
      ? [plateBehind(figure, ground), figure]
      : [{ ...figure, halo: { paint: ground, width: units.clear } }];
  return [shape.fill === "sheet" ? { ...figure, fill: ground } : figure];
};

const layerOf: Readonly<Record<Layer, LayerName>> = {
  area: "area",
  line: "line",
  cage: "cage",
  edge: "edge",
  outside: "outside",
  sign: "sentence",
};

/** A kind's shape as it is drawn in this picture. */
export const figuresOfShape = (shape: Shape, { tint, id }: Pick<Clue, "id" | "tint">, groundAt: GroundAt): Figure[] =>
  grounded(shape, bare(shape, layerOf[shape.layer], tint), groundAt).map((figure) => ({ ...figure, of: id }));

/** What a clue draws on the board; signs stand with its sentence. */
export const clueFigures = (clue: Clue, canvas: Canvas): Figure[] =>
  clue.shapes
    .filter(({ layer }) => layer !== "sign")
    .flatMap((shape) => figuresOfShape(shape, clue, (point) => sheetAt(canvas, point)));
