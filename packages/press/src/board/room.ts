import { centre, distance, type Place, type Point, type Shape } from "@solvewright/engine";
import { extentOf } from "../scene/extent.ts";
import { figuresOfShape } from "./clues.ts";
import { distanceToSegment, segmentsOf } from "./segments.ts";
import type { Clue } from "./subject.ts";

/** What the clues leave of a cell for its digit. */
export interface Room {
  /** How far a sum in its top left corner reaches from its left edge, in cells; 0 where none stands there. */
  readonly taken: number;
  /** A dark line runs under its digit. */
  readonly crossed: boolean;
}

const crosses = (shape: Shape, point: Point): boolean => {
  if (shape.layer !== "line" || (shape.stroke?.ink !== "clue-ink" && shape.fill !== "clue-ink")) return false;
  if (shape.shape === "disc") return shape.fill === "clue-ink" && distance(shape.at, point) < 0.2;
  if (shape.shape === "box") return shape.fill === "clue-ink" && distance(shape.at, point) < 0.2;
  if (shape.shape === "text") return false;
  return segmentsOf(shape.points, shape.closed).some((segment) => distanceToSegment(point, segment) < 0.2);
};

/** How far a sum in the cell's corner reaches from its left edge. */
const cornerSum = (shape: Shape, clue: Clue, [x, y]: Point): number[] => {
  if (shape.shape !== "text" || shape.layer !== "cage") return [];
  const { left, right, top, bottom } = extentOf(figuresOfShape(shape, clue, () => "sheet").at(-1)!);
  const [dx, dy] = [(left + right) / 2 - x, (top + bottom) / 2 - y];
  return dx > -0.5 && dx < 0.1 && dy > -0.5 && dy < -0.15 ? [right - x + 0.5] : [];
};

export const roomIn = (place: Place, clues: readonly Clue[]): Room => {
  const middle = centre(place);
  const sums = clues.flatMap((clue) => clue.shapes.flatMap((shape) => cornerSum(shape, clue, middle)));
  return {
    taken: Math.max(0, ...sums),
    crossed: clues.some(({ shapes }) => shapes.some((shape) => crosses(shape, middle))),
  };
};
