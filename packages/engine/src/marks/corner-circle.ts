import type { Point, Shape } from "./shape.ts";

/** How the digits of a corner circle stand: how many in a row, how far apart, how large. */
const circleRows = (
  digits: readonly number[],
): { readonly long: number; readonly step: number; readonly size: number } => {
  const many = digits.length;
  if (digits.some((digit) => digit > 9))
    return many < 3 ? { long: 1, step: 0, size: 0.2 } : { long: 2, step: 0.23, size: 0.155 };
  if (many === 4) return { long: 2, step: 0.18, size: 0.2 };
  return many === 3 ? { long: 3, step: 0.155, size: 0.19 } : { long: 2, step: 0.2, size: 0.25 };
};

/** A circle on the corner of four cells with up to four digits in it. */
export const cornerCircle = (digits: readonly number[], [x, y]: Point): Shape[] => {
  const { long, step, size } = circleRows(digits);
  const rows = Math.ceil(digits.length / long);
  const circle: Shape = {
    shape: "disc",
    layer: "edge",
    at: [x, y],
    radius: 0.27,
    fill: "sheet",
    stroke: { ink: "clue-ink", width: 0.035 },
  };
  const figures = digits.map((digit, k): Shape => {
    const row = Math.floor(k / long);
    const inRow = Math.min(long, digits.length - row * long);
    const down = (row - (rows - 1) / 2) * size * 0.95 + size * 0.36;
    const at: Point = [x + ((k % long) - (inRow - 1) / 2) * step, y + down];
    return { shape: "text", layer: "edge", at, text: String(digit), size, weight: 600, fill: "ink" };
  });
  return [circle, ...figures];
};
