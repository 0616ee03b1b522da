import type { Point, Shape, Stroke } from "./shape.ts";

const thin: Stroke = { ink: "clue-edge", width: 0.02 };

/** The square of an even cell. */
export const evenSquare = (at: Point): Shape => ({
  shape: "box",
  layer: "line",
  at,
  width: 0.66,
  height: 0.66,
  round: 0.03,
  fill: "clue",
  stroke: thin,
});

/** The disc of an odd cell. */
export const oddDisc = (at: Point): Shape => ({
  shape: "disc",
  layer: "line",
  at,
  radius: 0.33,
  fill: "clue",
  stroke: thin,
});

/** The two rings of a counting circle, with the letter of its set where it has one. */
export const doubleRing = (at: Point, letter: string): Shape[] => {
  const rings = [0.38, 0.3].map(
    (radius): Shape => ({ shape: "disc", layer: "line", at, radius, stroke: { ink: "clue-ink", width: 0.03 } }),
  );
  const corner: Point = [at[0] - 0.4, at[1] - 0.28];
  const label: Shape = { shape: "text", layer: "line", at: corner, text: letter, size: 0.24, weight: 600, fill: "ink" };
  return letter === "" ? rings : [...rings, label];
};

const chevron = ([x, y]: Point, [right, down]: Point, tip: number, base: number): Shape => ({
  shape: "line",
  layer: "line",
  points: [-0.13, 0, 0.13].map((aside): Point => {
    const out = aside === 0 ? tip : base;
    return [x + out * right - aside * down, y + out * down + aside * right];
  }),
  stroke: { ink: "clue-ink", width: 0.04, cap: "round" },
});

const ways: readonly Point[] = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
];

/** Four chevrons in a cell that point at its neighbours, or from them to its middle. */
export const chevronsOut = (at: Point): Shape[] => ways.map((way) => chevron(at, way, 0.45, 0.33));
export const chevronsIn = (at: Point): Shape[] => ways.map((way) => chevron(at, way, 0.32, 0.44));

/** The digits that a cell can be, in rows of at most five under a bar at its foot, clear of a digit placed above. */
export const digitsUnderBar = (digits: readonly number[], [x, y]: Point): Shape[] => {
  const rows = Math.ceil(digits.length / 5);
  const long = Math.ceil(digits.length / rows);
  const step = Math.min(0.22, 0.84 / long);
  const size = Math.min(0.22, step * (digits.some((digit) => digit > 9) ? 0.7 : 1.25), 0.62 / rows);
  const lead = size * 0.9;
  const foot = y + 0.44;
  const top = foot - (rows - 1) * lead - size * 0.86;
  const half = ((long - 1) * step) / 2 + size * 0.42;
  const figures = digits.map((digit, k): Shape => {
    const row = Math.floor(k / long);
    const inRow = Math.min(long, digits.length - row * long);
    const at: Point = [x + ((k % long) - (inRow - 1) / 2) * step, foot - (rows - 1 - row) * lead];
    return { shape: "text", layer: "line", at, text: String(digit), size, weight: 600, fill: "ink" };
  });
  const bar: Shape = {
    shape: "line",
    layer: "line",
    points: [
      [x - half, top],
      [x + half, top],
    ],
    stroke: { ink: "ink", width: 0.02 },
  };
  return [bar, ...figures];
};
