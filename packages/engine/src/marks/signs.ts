import type { Point, Shape, Stroke } from "./shape.ts";

/** Small drawings that stand beside a rule's sentence, in the square from [0, 0] to [1, 1]. */
const pen: Stroke = { ink: "ink", width: 0.08, cap: "round" };
const line = (points: readonly Point[], stroke: Stroke = pen): Shape => ({
  shape: "line",
  layer: "sign",
  points,
  stroke,
});
const dot = (at: Point, radius = 0.13): Shape => ({ shape: "disc", layer: "sign", at, radius, fill: "ink" });
const letter = (text: string, [x, y]: Point, size: number): Shape => ({
  shape: "text",
  layer: "sign",
  at: [x, y + 0.37 * size],
  text,
  size,
  weight: 700,
  fill: "ink",
});

const cross = ([x, y]: Point, half = 0.11): Shape[] => [
  line([
    [x - half, y - half],
    [x + half, y + half],
  ]),
  line([
    [x - half, y + half],
    [x + half, y - half],
  ]),
];

/** A black dot and a white one. */
export const dotsSign = (): Shape[] => [
  {
    shape: "disc",
    layer: "sign",
    at: [0.25, 0.5],
    radius: 0.19,
    fill: "dot-black",
    stroke: { ink: "dot-black-edge", width: 0.07 },
  },
  {
    shape: "disc",
    layer: "sign",
    at: [0.75, 0.5],
    radius: 0.19,
    fill: "dot-white",
    stroke: { ink: "dot-edge", width: 0.07 },
  },
];

/** A hollow bar. */
export const barSign = (): Shape[] => [
  {
    shape: "box",
    layer: "sign",
    at: [0.5, 0.5],
    width: 0.24,
    height: 0.9,
    fill: "sheet",
    stroke: { ink: "ink", width: 0.07 },
  },
];

/** An X and a V. */
export const xvSign = (): Shape[] => [letter("X", [0.24, 0.5], 0.62), letter("V", [0.78, 0.5], 0.62)];

/** A dot, and a cross a knight's move from it. */
export const knightSign = (): Shape[] => [
  line(
    [
      [0.3, 0.13],
      [0.3, 0.83],
      [0.54, 0.83],
    ],
    { ink: "clue-edge", width: 0.07 },
  ),
  dot([0.3, 0.13]),
  ...cross([0.66, 0.83], 0.13),
];

/** A dot, and crosses at its corners. */
export const kingSign = (): Shape[] => [
  dot([0.5, 0.5]),
  ...(
    [
      [0.14, 0.14],
      [0.86, 0.14],
      [0.14, 0.86],
      [0.86, 0.86],
    ] as const
  ).flatMap((at) => cross(at, 0.12)),
];

/** 1 and 2, and a struck line between them. */
export const notNextSign = (): Shape[] => {
  const thin: Stroke = { ink: "ink", width: 0.06 };
  const joint: readonly Point[] = [
    [0.3, 0.5],
    [0.64, 0.5],
  ];
  const stroke: readonly Point[] = [
    [0.38, 0.72],
    [0.56, 0.28],
  ];
  return [letter("1", [0.12, 0.5], 0.56), letter("2", [0.86, 0.5], 0.56), line(joint, thin), line(stroke, thin)];
};

/** Four boxes with a dot in the same place of each. */
export const boxesSign = (): Shape[] => {
  const edge: Stroke = { ink: "ink", width: 0.06 };
  const places = [0.02, 0.5].flatMap((top) => [0.02, 0.5].map((left): Point => [left, top]));
  return [
    { shape: "box", layer: "sign", at: [0.5, 0.5], width: 0.96, height: 0.96, stroke: edge },
    line(
      [
        [0.5, 0.02],
        [0.5, 0.98],
      ],
      edge,
    ),
    line(
      [
        [0.02, 0.5],
        [0.98, 0.5],
      ],
      edge,
    ),
    ...places.map(([left, top]) => dot([left + 0.15, top + 0.15], 0.09)),
  ];
};
