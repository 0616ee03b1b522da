import type { Point } from "@solvewright/engine";
import type { Figure } from "./figure.ts";

/** A figure of a clue as it is when its origin comes to lie at that point, all of it so many times as large. */
export const movedTo = (figure: Figure, [x, y]: Point, scale = 1): Figure => {
  const point = (at: Point): Point => [x + at[0] * scale, y + at[1] * scale];
  const pen = figure.pen ? { pen: { ...figure.pen, width: figure.pen.width * scale } } : {};
  switch (figure.shape) {
    case "paths":
      return { ...figure, ...pen, paths: figure.paths.map((path) => ({ ...path, points: path.points.map(point) })) };
    case "disc":
      return { ...figure, ...pen, at: point(figure.at), radius: figure.radius * scale };
    case "box": {
      const round = figure.round === undefined ? {} : { round: figure.round * scale };
      return {
        ...figure,
        ...pen,
        ...round,
        at: point(figure.at),
        width: figure.width * scale,
        height: figure.height * scale,
      };
    }
    case "text":
      return { ...figure, at: point(figure.at), size: figure.size * scale };
    default:
      return figure;
  }
};
