import type { Ink, Point, Shape } from "./shape.ts";

const layerOf = (points: readonly Point[], ink: Ink, width: number, bulb: number): Shape[] => [
  { shape: "disc", layer: "line", at: points[0]!, radius: bulb, fill: ink },
  { shape: "line", layer: "line", points, round: 0.18, stroke: { ink, width, cap: "round" } },
];

/** A thermometer: a tube of .23 from a bulb of .33 to a round end, with an edge; a hollow one shows the sheet in it. */
export const tube = (points: readonly Point[], inside: "full" | "hollow"): Shape[] => [
  ...layerOf(points, "clue-edge", 0.27, 0.33),
  ...(inside === "full" ? layerOf(points, "clue", 0.23, 0.31) : layerOf(points, "sheet", 0.2, 0.295)),
];
