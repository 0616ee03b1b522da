import type { Point, Shape } from "./shape.ts";

/** A letter on an edge, on a plate that clears the line behind it. */
export const letterOnEdge = (letter: string, at: Point): Shape => ({
  shape: "text",
  layer: "edge",
  at: [at[0], at[1] + 0.125],
  text: letter,
  size: 0.34,
  weight: 700,
  plate: true,
  fill: "ink",
});

/** A hollow bar that lies along the edge between two cells. */
export const barOnEdge = ([a, b]: readonly [Point, Point], at: Point): Shape => {
  const upright = a[1] === b[1];
  return {
    shape: "box",
    layer: "edge",
    at,
    width: upright ? 0.13 : 0.54,
    height: upright ? 0.54 : 0.13,
    fill: "sheet",
    stroke: { ink: "ink", width: 0.025 },
  };
};

/** A chevron on the edge between two cells, open towards the first. */
export const chevronOnEdge = ([a, b]: readonly [Point, Point], at: Point): Shape[] => {
  const [right, down] = [Math.sign(b[0] - a[0]), Math.sign(b[1] - a[1])];
  const turned = (along: number, aside: number): Point => [
    at[0] + along * right - aside * down,
    at[1] + along * down + aside * right,
  ];
  return [
    { shape: "disc", layer: "edge", at, radius: 0.17, fill: "sheet" },
    {
      shape: "line",
      layer: "edge",
      points: [turned(-0.08, -0.13), turned(0.09, 0), turned(-0.08, 0.13)],
      stroke: { ink: "ink", width: 0.045, cap: "round" },
    },
  ];
};
