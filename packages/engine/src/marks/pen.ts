import type { Point, Shape, Stroke } from "./shape.ts";

/** The ink that clues are drawn with. */
export const pen = (width: number, more: Partial<Stroke> = {}): Stroke => ({ ink: "clue-ink", width, ...more });

/** What lets the grid show through a heavy line. */
export const heavy = 0.85;

export const inked = (points: readonly Point[], stroke: Stroke, opacity = 1): Shape => ({
  shape: "line",
  layer: "line",
  points,
  stroke,
  opacity,
});
