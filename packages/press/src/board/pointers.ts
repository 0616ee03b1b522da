import { centre, outlineOf, type Place } from "@solvewright/engine";
import type { Extent } from "../scene/extent.ts";
import type { Figure, PatternName } from "../scene/figure.ts";
import { type Colour, units } from "../tokens.ts";
import { areaOf } from "./sheets.ts";

const area = (places: readonly Place[]): readonly Place[] | undefined => (places.length > 0 ? places : undefined);

/** Cells that a step leans on: hatched. */
export const hatchFigures = (places: readonly Place[], of?: string): Figure[] =>
  area(places)
    ? [{ ...areaOf(places), layer: "hatch", fill: { pattern: "hatch" }, ...(of === undefined ? {} : { of }) }]
    : [];

/** Cells in which the two solutions shown differ. */
export const differFigures = (places: readonly Place[]): Figure[] =>
  area(places) ? [{ ...areaOf(places), layer: "hatch", fill: { pattern: "dots" } }] : [];

export type Wash = "rain" | "weave" | "scale";
const washes: Readonly<Record<Wash, { readonly ground: Colour; readonly pattern: PatternName }>> = {
  rain: { ground: "wash-rain", pattern: "rain" },
  weave: { ground: "wash-weave", pattern: "weave" },
  scale: { ground: "wash-scale", pattern: "scale" },
};

/** Shading on the stage: a pale ground and a pattern of its own. */
export const washFigures = (wash: Wash, places: readonly Place[]): Figure[] => {
  const { ground, pattern } = washes[wash];
  return area(places)
    ? [
        { ...areaOf(places), layer: "wash", fill: ground },
        { ...areaOf(places), layer: "wash", fill: { pattern } },
      ]
    : [];
};

/** The chosen cells: an ink frame inside a clear band. */
export const focusFigures = (places: readonly Place[]): Figure[] => {
  const frame = (place: Place, paint: Colour, width: number): Figure => ({
    shape: "box",
    layer: "focus",
    at: centre(place),
    width: 0.94,
    height: 0.94,
    pen: { paint, width },
  });
  return [
    ...places.map((place) => frame(place, "sheet", units.focus + 0.06)),
    ...places.map((place) => frame(place, "focus", units.focus)),
  ];
};

const everything = ({ left, top, right, bottom }: Extent): Figure & { shape: "paths" } => ({
  shape: "paths",
  layer: "veil",
  paths: [
    {
      points: [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ],
      closed: true,
    },
  ],
});

/** A veil of the ground over all but these cells. */
export const veilFigures = (
  places: readonly Place[],
  extent: Extent,
  ground: Colour,
  opacity: number,
  edge = 0,
): Figure[] => {
  const whole = everything(extent);
  const holes = outlineOf(places, -edge).map((points) => ({ points, closed: true }));
  return [{ ...whole, paths: [...whole.paths, ...holes], fill: ground, opacity }];
};

/** While it is held, the cells pointed at keep their strength inside a frame and the rest steps back to a third. */
export const pointingFigures = (places: readonly Place[], extent: Extent, ground: Colour): Figure[] => [
  ...veilFigures(places, extent, ground, 0.67),
  {
    shape: "paths",
    layer: "veil",
    paths: outlineOf(places).map((points) => ({ points, closed: true })),
    pen: { paint: "focus", width: 0.06 },
  },
];
