import { centre, type Place, type Point } from "@solvewright/engine";
import type { Paint } from "../colours.ts";
import type { Figure, Pen } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import { digitFigure } from "./digits.ts";
import type { Room } from "./room.ts";
import { areaOf } from "./sheets.ts";

const frame = (place: Place, inset: number, pen: Pen, round = 0): Figure => ({
  shape: "box",
  layer: "conclusion",
  at: centre(place),
  width: 1 - 2 * inset,
  height: 1 - 2 * inset,
  round,
  pen,
});

/** The digit that follows: a heavy digit in a solid frame on a wash, which ends brackets that reach in from the sides. */
export const soFigures = (digit: number, place: Place, room: Room): Figure[] => [
  { ...areaOf([place]), layer: "wash", fill: "so-wash" },
  frame(place, -0.03, { paint: "sheet", width: 0.06 }),
  { ...frame(place, 0.1, { paint: "so-wash", width: 0.1 }), layer: "bracket" },
  frame(place, 0.02, { paint: "so", width: units.so }),
  digitFigure(digit, place, room, { layer: "conclusion", weight: 800, fill: "so-text", ground: "so-wash" }),
];

/** What follows next in the beat: a lighter digit in a dashed frame. */
export const thenFigures = (digit: number, place: Place, room: Room, ground: Paint): Figure[] => [
  frame(place, 0.09, { paint: "so", width: units.then, dash: [0.1, 0.07] }, 0.03),
  digitFigure(digit, place, room, { layer: "conclusion", weight: 480, fill: "so-text", ground }),
];

/** A cell that loses more than can be shown in it: a thin solid frame. */
export const narrowedFigure = (place: Place): Figure => frame(place, 0.09, { paint: "so", width: units.then }, 0.03);

const corner = ([x, y]: Point, right: 1 | -1, down: 1 | -1): readonly Point[] => {
  const [cx, cy] = [x - right * 0.4, y - down * 0.4];
  return [
    [cx + right * 0.2, cy],
    [cx, cy],
    [cx, cy + down * 0.2],
  ];
};

/** A what-if: three corners of a frame, a question mark in the fourth. */
export const whatIfFigures = (digit: number, place: Place, room: Room, ground: Paint): Figure[] => {
  const at = centre(place);
  const corners = [corner(at, 1, 1), corner(at, 1, -1), corner(at, -1, -1)];
  return [
    {
      shape: "paths",
      layer: "conclusion",
      paths: corners.map((points) => ({ points })),
      pen: { paint: "warn-text", width: 0.07 },
    },
    {
      shape: "text",
      layer: "conclusion",
      at: [at[0] + 0.33, at[1] - 0.16],
      text: "?",
      size: 0.32,
      weight: 600,
      fill: "warn-text",
    },
    digitFigure(digit, place, room, { layer: "conclusion", weight: 480, fill: "warn-text", ground }),
  ];
};

/** What a what-if leads to on its way: the digit alone, in the what-if's ink. */
export const ledToFigure = (digit: number, place: Place, room: Room, ground: Paint): Figure =>
  digitFigure(digit, place, room, { layer: "conclusion", weight: 480, fill: "warn-text", ground });

/** Nothing is left for this cell. */
export const clashFigures = (place: Place): Figure[] => {
  const [x, y] = centre(place);
  return [
    frame(place, 0.05, { paint: "gone-text", width: 0.06, dash: [0.001, 0.1], cap: "round" }, 0.03),
    {
      shape: "text",
      layer: "conclusion",
      at: [x, y + 0.23],
      text: "?",
      size: units.digit,
      weight: 800,
      fill: "gone-text",
    },
  ];
};

/** A wrong entry: a cross through the cell that leaves the digit to be read. */
export const slipFigures = (place: Place): Figure[] => {
  const [x, y] = centre(place);
  const arm = (right: number, down: number): readonly Point[] => [
    [x + right * 0.42, y + down * 0.42],
    [x + right * 0.22, y + down * 0.25],
  ];
  const paths = [arm(-1, -1), arm(1, -1), arm(1, 1), arm(-1, 1)].map((points) => ({ points }));
  return [{ shape: "paths", layer: "conclusion", paths, pen: { paint: "gone-text", width: 0.07, cap: "round" } }];
};

/** A right entry whose reason was not said: an open diamond round the digit. */
export const leapFigures = (place: Place): Figure[] => {
  const [x, y] = centre(place);
  const points: Point[] = [
    [x, y - 0.46],
    [x + 0.46, y],
    [x, y + 0.46],
    [x - 0.46, y],
  ];
  return [
    {
      shape: "paths",
      layer: "conclusion",
      paths: [{ points, closed: true }],
      pen: { paint: "warn-text", width: 0.05 },
    },
  ];
};
