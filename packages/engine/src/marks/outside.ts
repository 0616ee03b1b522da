import type { Point, Shape, Stroke } from "./shape.ts";

/** Where a clue stands beside a line: the middle of its number, one step into the grid, and its scale. */
export interface Stand {
  readonly at: Point;
  readonly along: Point;
  readonly scale: number;
}

/** The scale of a clue that stands among the cells of another grid. */
export const crowded = 0.58;

const pen: Stroke = { ink: "clue-edge", width: 0.035 };
const size = 0.34;

/** The point so far into the grid from the number's middle, and so far down (beside a row) or right (of a column). */
const spot = ({ at, along: [x, y], scale }: Stand, inward: number, aside: number): Point => [
  at[0] + scale * (inward * x + aside * Math.abs(y)),
  at[1] + scale * (inward * y + aside * Math.abs(x)),
];
/** The point so far right and down of the number's middle, whichever side it stands on. */
const off = ({ at, scale }: Stand, right: number, down: number): Point => [at[0] + scale * right, at[1] + scale * down];

/** About half the width of a number set at .34. */
const halfWidth = (text: string): number => text.length * 0.105;

/** Beside a row, a number of three figures stands further out. */
const madeRoom = (stand: Stand, text: string): Stand => {
  const out = stand.along[0] === 0 ? 0 : -Math.max(0, halfWidth(text) - 0.21);
  return { ...stand, at: spot(stand, out, 0) };
};

const number = (stand: Stand, text: string, [right, down]: Point = [0, 0], high = size): Shape => ({
  shape: "text",
  layer: "outside",
  at: off(stand, right, down + 0.37 * high),
  text,
  size: high * stand.scale,
  weight: 700,
  plate: true,
  fill: "ink",
});

const line = ({ scale }: Stand, points: readonly Point[], stroke: Stroke = pen): Shape => ({
  shape: "line",
  layer: "outside",
  points,
  stroke: { ...stroke, width: stroke.width * scale },
});

const across = (stand: Stand, half: number, down: number): Shape =>
  line(stand, [off(stand, -half, down), off(stand, half, down)]);

/** A number between two slices. */
export const betweenSlices = (beside: Stand, text: string): Shape[] => {
  const stand = madeRoom(beside, text);
  const half = Math.max(0.21, halfWidth(text) + 0.02);
  return [number(stand, text), across(stand, half, -0.2), across(stand, half, 0.2)];
};

/** A number underlined, and a dot between it and the grid. */
export const underlined = (beside: Stand, text: string): Shape[] => {
  const stand = madeRoom(beside, text);
  const dot: Shape = {
    shape: "disc",
    layer: "outside",
    at: spot(beside, 0.345, 0),
    radius: 0.045 * stand.scale,
    fill: "clue-ink",
  };
  return [number(stand, text), across(stand, Math.max(0.16, halfWidth(text)), 0.2), dot];
};

/** A number above three towers. */
export const aboveTowers = (beside: Stand, text: string): Shape[] => {
  const stand = madeRoom(beside, text);
  const foot = 0.29;
  const skyline: readonly Point[] = [
    [-0.18, foot],
    [-0.18, foot - 0.09],
    [-0.06, foot - 0.09],
    [-0.06, foot - 0.16],
    [0.06, foot - 0.16],
    [0.06, foot - 0.24],
    [0.18, foot - 0.24],
    [0.18, foot],
  ];
  const walls = [-0.06, 0.06].map((x, k) => line(stand, [off(stand, x, foot - 0.09 - 0.07 * k), off(stand, x, foot)]));
  return [
    number(stand, text, [0, -0.18]),
    line(
      stand,
      skyline.map(([x, y]) => off(stand, x, y)),
    ),
    ...walls,
  ];
};

/** A number in a doorway. */
export const inDoorway = (beside: Stand, text: string): Shape[] => {
  const stand = madeRoom(beside, text);
  const half = Math.max(0.235, halfWidth(text) + 0.05);
  const frame = [off(stand, -half, 0.28), off(stand, -half, -0.28), off(stand, half, -0.28), off(stand, half, 0.28)];
  return [number(stand, text), line(stand, frame)];
};

/** A number and a bracket that opens to the grid. */
export const withBracket = (beside: Stand, text: string): Shape[] => {
  const stand = madeRoom(beside, text);
  const bracket = [
    spot(beside, 0.38, -0.32),
    spot(beside, 0.29, -0.32),
    spot(beside, 0.29, 0.32),
    spot(beside, 0.38, 0.32),
  ];
  return [number(stand, text), line(beside, bracket)];
};

/** Digits along the edge, in even ranks of three at most, and a dotted post between them and the grid. */
export const behindPost = (stand: Stand, digits: readonly number[]): Shape[] => {
  const [x, y] = stand.along;
  const isWide = digits.some((digit) => digit > 9);
  const [along, outward] = y === 0 ? [0.3, isWide ? 0.46 : 0.28] : [isWide ? 0.44 : 0.29, 0.32];
  const ranks = Math.ceil(digits.length / (isWide && y !== 0 ? 2 : 3));
  const inRank = Math.ceil(digits.length / ranks);
  const high = digits.length > 2 ? 0.3 : size;
  const shapes = digits.map((digit, k) => {
    const rank = Math.floor(k / inRank);
    const out = x + y > 0 ? ranks - 1 - rank : rank;
    const here = Math.min(inRank, digits.length - rank * inRank);
    const at = spot(stand, -out * outward, ((k % inRank) - (here - 1) / 2) * along);
    return number({ ...stand, at }, String(digit), [0, 0], high);
  });
  const post: Stroke = { ink: "clue-ink", width: 0.035, dash: [0.04, 0.05] };
  return [...shapes, line(stand, [spot(stand, 0.32, -0.3), spot(stand, 0.32, 0.3)], post)];
};

/** A number at the corner where a diagonal enters its first cell, and an arrow along it; `first` is the cell's middle. */
export const diagonalArrow = (first: Point, along: Point, text: string, scale = 1): Shape[] => {
  const from = (right: number, down: number): Point => [
    first[0] + (scale * right - 0.5) * along[0],
    first[1] + (scale * down - 0.5) * along[1],
  ];
  const arrow = (...points: Point[]): Shape => ({
    shape: "line",
    layer: "outside",
    points,
    stroke: { ink: "clue-ink", width: 0.035 * scale, cap: "round" },
  });
  const [right, down] = from(-0.34, -0.32);
  const figure: Shape = {
    shape: "text",
    layer: "outside",
    at: [right, down + 0.37 * size * scale],
    text,
    size: size * scale,
    weight: 700,
    anchor: along[0] > 0 ? "end" : "start",
    plate: true,
    fill: "ink",
  };
  const tip = from(-0.06, -0.06);
  return [figure, arrow(from(-0.3, -0.3), tip), arrow(from(-0.2, -0.06), tip, from(-0.06, -0.2))];
};
