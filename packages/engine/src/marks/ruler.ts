import type { Place } from "../puzzle/canvas.ts";
import { centres } from "./points.ts";
import type { Point, Shape, Stroke } from "./shape.ts";

const pen: Stroke = { ink: "clue-ink", width: 0.035 };
const quarters = 4;

/** A tinted row or column with a ruler along its left or upper side and a pointer at its head; first cell first. */
export const rulerAlong = (places: readonly Place[]): Shape[] => {
  const [first, last] = [centres(places)[0]!, centres(places).at(-1)!];
  const isRow = first[1] === last[1];
  /** So far along the line from the grid's edge, and so far into it from its side. */
  const spot = (along: number, aside: number): Point =>
    isRow ? [first[0] - 0.5 + along, first[1] - 0.5 + aside] : [first[0] - 0.5 + aside, first[1] - 0.5 + along];
  const line = (...points: Point[]): Shape => ({ shape: "line", layer: "line", points, stroke: pen });
  const { length } = places;
  const ground: Shape = {
    shape: "box",
    layer: "area",
    at: spot(length / 2, 0.5),
    width: isRow ? length : 1,
    height: isRow ? 1 : length,
    fill: "clue",
    opacity: 0.6,
  };
  const ticks = Array.from({ length: length * quarters - 1 }, (_, k) => (k + 1) / quarters).map((at) =>
    line(spot(at, 0.06), spot(at, Number.isInteger(at) ? 0.26 : 0.16)),
  );
  const pointer: Shape = {
    shape: "line",
    layer: "outside",
    points: [spot(-0.07, 0.5), spot(-0.22, 0.36), spot(-0.22, 0.64)],
    closed: true,
    fill: "clue-edge",
  };
  return [ground, line(spot(0, 0.06), spot(length, 0.06)), ...ticks, pointer];
};
