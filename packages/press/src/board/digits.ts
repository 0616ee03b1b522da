import { centre, type Place } from "@solvewright/engine";
import type { Paint } from "../colours.ts";
import type { Figure, LayerName } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import type { Room } from "./room.ts";

export interface DigitLook {
  readonly weight: number;
  readonly fill: Paint;
  readonly layer?: LayerName;
  readonly opacity?: number;
  /** What is cleared round its strokes where a dark line runs under it. */
  readonly ground: Paint;
}

/** A big digit in its cell; it makes way for a sum in the corner. */
export const digitFigure = (digit: number, place: Place, room: Room, look: DigitLook): Figure => {
  const [x, y] = centre(place);
  const [right, lower] = room.taken > 0 ? [0.09, 0.08] : [0, 0];
  const { layer = "digit", weight, fill, ground, opacity } = look;
  const size = digit > 9 ? 0.5 : units.digit;
  return {
    shape: "text",
    layer,
    at: [x + right, y + lower + size * 0.37],
    text: String(digit),
    size,
    weight,
    fill,
    ...(room.crossed ? { halo: { paint: ground, width: units.clear } } : {}),
    ...(opacity === undefined ? {} : { opacity }),
  };
};

/** A given is heavy and stands on a foot. */
export const givenFigures = (digit: number, place: Place, room: Room, ground: Paint): Figure[] => {
  const [x, y] = centre(place);
  const [right, lower] = room.taken > 0 ? [0.09, 0.05] : [0, 0];
  const foot: Figure = {
    shape: "paths",
    layer: "digit",
    paths: [
      {
        points: [
          [x + right - 0.15, y + lower + 0.32],
          [x + right + 0.15, y + lower + 0.32],
        ],
      },
    ],
    pen: { paint: "ink", width: 0.035 },
  };
  return [digitFigure(digit, place, room, { weight: 800, fill: "ink", ground }), foot];
};

/** What stands settled: lighter than a given, no foot. */
export const settledFigure = (digit: number, place: Place, room: Room, ground: Paint): Figure =>
  digitFigure(digit, place, room, { weight: 480, fill: "pencil", ground });
