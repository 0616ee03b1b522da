import type { Point, Shape } from "./shape.ts";

/** A Kropke dot on an edge, radius .14, or .20 with its number in it. */
export const numberedDot = (colour: "white" | "black", at: Point, number: number | undefined): Shape[] => {
  const radius = number === undefined ? 0.14 : 0.2;
  const white = colour === "white";
  const disc: Shape = {
    shape: "disc",
    layer: "edge",
    at,
    radius,
    fill: white ? "dot-white" : "dot-black",
    stroke: white ? { ink: "dot-edge", width: 0.04 } : { ink: "dot-black-edge", width: 0.03 },
  };
  if (number === undefined) return [disc];
  const figure: Shape = {
    shape: "text",
    layer: "edge",
    at: [at[0], at[1] + 0.1],
    text: String(number),
    size: 0.27,
    weight: 700,
    fill: white ? "dot-black" : "dot-white",
  };
  return [disc, figure];
};
