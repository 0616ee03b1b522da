import { outlineOf } from "./outline.ts";
import { distance } from "./points.ts";
import type { Layer, Point, Shape, Stroke } from "./shape.ts";

const pen: Stroke = { ink: "clue-ink", width: 0.05, cap: "round" };
const border: Stroke = { ink: "clue-ink", width: 0.03 };

/** The points of a wave from a (left out) to b: it swings to both sides in whole waves of about that length. */
const waveBetween = (a: Point, b: Point, swing: number, length: number): Point[] => {
  const whole = distance(a, b);
  const quarters = 4 * Math.max(1, Math.round(whole / length));
  const [alongX, alongY] = [(b[0] - a[0]) / whole, (b[1] - a[1]) / whole];
  return Array.from({ length: quarters }, (_, k): Point => {
    const along = ((k + 1) / quarters) * whole;
    const aside = [swing, 0, -swing, 0][k % 4]!;
    return [a[0] + alongX * along - alongY * aside, a[1] + alongY * along + alongX * aside];
  });
};

const waves = (corners: readonly Point[], swing: number, length: number): Point[] =>
  corners.slice(1).flatMap((corner, k) => waveBetween(corners[k]!, corner, swing, length));

const waveLine = (points: readonly Point[]): Shape => ({
  shape: "line",
  layer: "line",
  points: [points[0]!, ...waves(points, 0.07, 0.5)],
  round: 1,
  stroke: pen,
});

const waveBorder = (loop: readonly Point[]): Shape => ({
  shape: "line",
  layer: "cage",
  points: waves([...loop, loop[0]!], 0.025, 0.16),
  round: 1,
  closed: true,
  stroke: border,
});

const diamond = ([x, y]: Point): Shape => ({
  shape: "line",
  layer: "line",
  points: [
    [x, y - 0.12],
    [x + 0.12, y],
    [x, y + 0.12],
    [x - 0.12, y],
  ],
  closed: true,
  fill: "clue-ink",
});

/** The square with the number that the rule's sentence bears too; `size` is its side. */
const numbered = (number: string, [x, y]: Point, size: number, layer: Layer): Shape[] => [
  {
    shape: "box",
    layer,
    at: [x, y],
    width: size,
    height: size,
    fill: "sheet",
    stroke: { ink: "ink", width: size / 11 },
  },
  { shape: "text", layer, at: [x, y + size * 0.26], text: number, size: size * 0.72, weight: 700, fill: "ink" },
];

const cellAround = ([x, y]: Point) => ({ row: y + 0.5, column: x + 0.5 });

const drawings = {
  line: (points: readonly Point[]): Shape[] => (points.length > 1 ? [waveLine(points)] : points.map(diamond)),
  area: (points: readonly Point[]): Shape[] => outlineOf(points.map(cellAround), 0.07).map(waveBorder),
  dots: (points: readonly Point[]): Shape[] => points.map(diamond),
};

/**
 * The setter's own rule at the middles of its cells: a wavering line, a wavering border or diamonds; its number at the
 * first cell and on its sign.
 */
export const ownDrawing = (drawn: "line" | "area" | "dots", points: readonly Point[], number: string): Shape[] => {
  const sign = numbered(number, [0.5, 0.5], 0.86, "sign");
  const first = drawn === "area" ? [...points].sort((a, b) => a[1] - b[1] || a[0] - b[0])[0] : points[0];
  if (!first) return sign;
  return [...drawings[drawn](points), ...numbered(number, [first[0] - 0.29, first[1] - 0.29], 0.28, "cage"), ...sign];
};
