import type { Reach, Stretch } from "@solvewright/engine";
import { coloursOf } from "../colours.ts";
import type { Figure } from "../scene/figure.ts";
import { sceneOf } from "../scene/scene.ts";
import { svgOf } from "../svg/svg.ts";
import type { Theme } from "../tokens.ts";

export interface StripOptions {
  readonly theme?: Theme;
  /** CSS that brings the fonts, for a file that stands alone. */
  readonly fontCss?: string;
  /** What is said of each pause, in the order of `pauses`. */
  readonly said: readonly string[];
  readonly title: string;
}

/** In units of 24 pixels, from the top left. */
const unit = 24;
const width = 40;
const side = 1.2;
const base = 9.4;
const tallest = 6;
const signs = base + 0.9;
const listFrom = signs + 2.6;
const leading = 1.2;

const text = (
  at: readonly [number, number],
  words: string,
  look: Partial<Figure & { shape: "text" }> = {},
): Figure => ({
  shape: "text",
  layer: "letter",
  at,
  text: words,
  size: 0.66,
  anchor: "start",
  fill: "ink",
  ...look,
});

/** Where the bar of the digit at that place stands. */
const columnOf = (k: number, count: number) => {
  const each = (width - 2 * side) / Math.max(1, count);
  return { x: side + (k + 0.5) * each, wide: Math.min(1.1, each * 0.72) };
};

const barOf = ({ pause }: Stretch, k: number, { way, pauses }: Reach, most: number): Figure[] => {
  const { x, wide } = columnOf(k, way.length);
  const height = Math.max(0.06, (pause / most) * tallest);
  const rank = pauses.indexOf(k);
  const box = { shape: "box", at: [x, base - height / 2], width: wide, height } as const;
  if (rank < 0) return [{ ...box, layer: "area", fill: "block", pen: { paint: "hair", width: 0.04 } }];
  const top = base - height;
  return [
    { ...box, layer: "area", fill: "so-wash", pen: { paint: "so", width: 0.08 } },
    { ...box, layer: "hatch", fill: { pattern: "hatch" } },
    text([x, top - 0.4], `${rank + 1}`, { anchor: "middle", weight: 700, size: 0.8, fill: "so-text" }),
  ];
};

/** A narrow place has its sign below: filled where no easy step is open, a ring where one is. */
const signOf = ({ open }: Stretch, k: number, count: number): Figure[] => {
  if (open > 1) return [];
  const radius = Math.min(0.22, columnOf(k, count).wide / 2.4);
  const disc = { shape: "disc", layer: "line", at: [columnOf(k, count).x, signs], radius } as const;
  return [{ ...disc, fill: open === 0 ? "ink" : "sheet", pen: { paint: "ink", width: 0.06 } }];
};

const legend: readonly Figure[] = [
  { shape: "disc", layer: "line", at: [side + 0.2, signs + 1.1], radius: 0.2, fill: "ink" },
  text([side + 0.6, signs + 1.32], "no easy step is open", { fill: "ink-2" }),
  {
    shape: "disc",
    layer: "line",
    at: [side + 9.2, signs + 1.1],
    radius: 0.2,
    fill: "sheet",
    pen: { paint: "ink", width: 0.06 },
  },
  text([side + 9.6, signs + 1.32], "one is", { fill: "ink-2" }),
  text([width - side, signs + 1.32], "digit by digit, from the first to the last", { anchor: "end", fill: "ink-2" }),
];

/** The way through a puzzle digit by digit: the taller, the longer a pause is likely; the likeliest are numbered and said. */
export const reachStrip = (reach: Reach, { theme = "light", fontCss, said, title }: StripOptions): string => {
  const { way } = reach;
  const most = Math.max(1e-9, ...way.map(({ pause }) => pause));
  const figures: Figure[] = [
    text([side, 1.5], `${title}: where a pause is likely`, { size: 0.95, weight: 600 }),
    {
      shape: "paths",
      layer: "line",
      paths: [
        {
          points: [
            [side, base],
            [width - side, base],
          ],
        },
      ],
      pen: { paint: "ink-3", width: 0.05 },
    },
    ...way.flatMap((stretch, k) => [...barOf(stretch, k, reach, most), ...signOf(stretch, k, way.length)]),
    ...legend,
    ...said.map((words, k) => text([side, listFrom + leading * (k + 0.6)], `${k + 1}.  ${words}`)),
  ];
  const bottom = listFrom + leading * said.length + 0.6;
  return svgOf(sceneOf(figures), {
    extent: { left: 0, top: 0, right: width, bottom },
    colours: coloursOf(theme),
    ground: "sheet",
    cell: unit,
    label: [title, ...said.map((words, k) => `${k + 1}. ${words}`)].join(" "),
    ...(fontCss ? { fontCss } : {}),
  });
};
