import type { Point, Shape } from "./shape.ts";

/** A bead of .24 on each cell, on a soft band. */
export const beads = (points: readonly Point[]): Shape[] => [
  { shape: "line", layer: "line", points, stroke: { ink: "clue", width: 0.22 } },
  ...points.map(
    (at): Shape => ({
      shape: "disc",
      layer: "line",
      at,
      radius: 0.24,
      fill: "clue",
      stroke: { ink: "clue-edge", width: 0.02 },
    }),
  ),
];
