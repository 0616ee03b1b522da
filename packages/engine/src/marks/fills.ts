import type { Place } from "../puzzle/canvas.ts";
import { outlineOf } from "./outline.ts";
import { centre } from "./points.ts";
import type { Point, Shape } from "./shape.ts";

/** Cells laid out in the colour of clues, each for itself, so that holes stay bare. */
const tinted = (places: readonly Place[]): Shape[] =>
  places.map((place) => ({ shape: "box", layer: "area", at: centre(place), width: 1, height: 1, fill: "clue" }));

/** Tinted cells inside one strong line. */
export const fortressWall = (places: readonly Place[]): Shape[] => [
  ...tinted(places),
  ...outlineOf(places, 0.045).map(
    (points): Shape => ({
      shape: "line",
      layer: "line",
      points,
      closed: true,
      stroke: { ink: "clue-ink", width: 0.05 },
    }),
  ),
];

const rulesPerCell = 8;

/** Cells side by side in a row, as the first's and the last's columns. */
const runsInRows = (places: readonly Place[]): { row: number; from: number; to: number }[] => {
  const runs: { row: number; from: number; to: number }[] = [];
  for (const { row, column } of [...places].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const last = runs.at(-1);
    if (last?.row === row && last.to === column - 1) last.to = column;
    else runs.push({ row, from: column, to: column });
  }
  return runs;
};

/** Horizontal rules from side to side of the cells, inside a thin line. */
export const ruledAcross = (places: readonly Place[]): Shape[] => {
  const rules = runsInRows(places).flatMap(({ row, from, to }) =>
    Array.from({ length: rulesPerCell }, (_, k): Shape => {
      const y = row - 1 + (k + 0.5) / rulesPerCell;
      const points: Point[] = [
        [from - 1, y],
        [to, y],
      ];
      return { shape: "line", layer: "line", points, stroke: { ink: "clue-edge", width: 0.018 }, opacity: 0.75 };
    }),
  );
  const edge = outlineOf(places, 0.02).map(
    (points): Shape => ({
      shape: "line",
      layer: "line",
      points,
      closed: true,
      stroke: { ink: "clue-edge", width: 0.03 },
    }),
  );
  return [...rules, ...edge];
};

const squares = 5;
const tile = 0.82;

/** A tile of squared paper in a cell, with a letter in its corner where it bears one. */
export const squaredPaper = (place: Place, letter: string | undefined): Shape[] => {
  const [x, y] = centre(place);
  const line = (points: Point[]): Shape => ({
    shape: "line",
    layer: "line",
    points,
    stroke: { ink: "clue-edge", width: 0.012 },
  });
  const lines = Array.from({ length: squares - 1 }, (_, k) => ((k + 1) / squares - 0.5) * tile).flatMap((at) => [
    line([
      [x + at, y - tile / 2],
      [x + at, y + tile / 2],
    ]),
    line([
      [x - tile / 2, y + at],
      [x + tile / 2, y + at],
    ]),
  ]);
  const edge: Shape = {
    shape: "box",
    layer: "line",
    at: [x, y],
    width: tile,
    height: tile,
    round: 0.06,
    stroke: { ink: "clue-edge", width: 0.024 },
  };
  const label: Shape = {
    shape: "text",
    layer: "cage",
    at: [x - 0.24, y - 0.14],
    text: letter ?? "",
    size: 0.24,
    weight: 600,
    plate: true,
    fill: "ink",
  };
  return [...lines, edge, ...(letter === undefined ? [] : [label])];
};

/** A tinted block with its two diagonals dotted, from its top left and bottom right cells. */
export const crossedBlock = (places: readonly Place[]): Shape[] => {
  const [rows, columns] = [places.map(({ row }) => row), places.map(({ column }) => column)];
  const [top, bottom] = [Math.min(...rows) - 0.92, Math.max(...rows) - 0.08];
  const [left, right] = [Math.min(...columns) - 0.92, Math.max(...columns) - 0.08];
  const dotted = (points: Point[]): Shape => ({
    shape: "line",
    layer: "line",
    points,
    stroke: { ink: "clue-edge", width: 0.028, dash: [0.04, 0.05] },
  });
  return [
    ...tinted(places),
    dotted([
      [left, top],
      [right, bottom],
    ]),
    dotted([
      [right, top],
      [left, bottom],
    ]),
  ];
};
