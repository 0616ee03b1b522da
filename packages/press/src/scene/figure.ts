import type { Point } from "@solvewright/engine";
import type { Paint } from "../colours.ts";

/** The order of drawing, from the ground up. */
export const layers = [
  "sheet",
  "area",
  "wash",
  "band",
  "hatch",
  "gap",
  "line",
  "hair",
  "region",
  "outline",
  "bracket",
  "rim",
  "outside",
  "cage",
  "digit",
  "conclusion",
  "focus",
  "edge",
  "ring",
  "veil",
  "letter",
  "sentence",
] as const;
export type LayerName = (typeof layers)[number];

export type PatternName = "hatch" | "dots" | "rain" | "weave" | "scale";
export type Fill = Paint | { readonly pattern: PatternName };

export interface Pen {
  readonly paint: Paint;
  readonly width: number;
  readonly dash?: readonly number[];
  readonly cap?: "butt" | "round" | "square";
  readonly join?: "miter" | "round";
}

interface Look {
  readonly layer: LayerName;
  readonly fill?: Fill;
  readonly pen?: Pen;
  /** From 0 to 1; 1 where it is not said. */
  readonly opacity?: number;
  /** What it belongs to, for pages that light it up: a reason's letter, a rule's id. */
  readonly of?: string;
}

export interface Path {
  readonly points: readonly Point[];
  /** Corners are softened over that length on each side. */
  readonly round?: number;
  readonly closed?: boolean;
}

export type Paths = Look & { readonly shape: "paths"; readonly paths: readonly Path[] };
export type Disc = Look & { readonly shape: "disc"; readonly at: Point; readonly radius: number };
export type Box = Look & {
  readonly shape: "box";
  /** Its middle. */
  readonly at: Point;
  readonly width: number;
  readonly height: number;
  readonly round?: number;
};
/** Pieces of an ellipse, from angle to angle in radians, clockwise from the right. */
export type Arcs = Look & {
  readonly shape: "arcs";
  readonly at: Point;
  readonly radii: readonly [x: number, y: number];
  readonly spans: readonly (readonly [from: number, to: number])[];
};
export type Text = Look & {
  readonly shape: "text";
  /** The middle of the baseline unless anchored otherwise. */
  readonly at: Point;
  readonly text: string;
  readonly size: number;
  readonly weight?: number;
  readonly anchor?: "start" | "middle" | "end";
  readonly face?: "voice" | "desk";
  /** The ground cleared round the strokes, that wide on each side. */
  readonly halo?: { readonly paint: Paint; readonly width: number };
};
/** A band round other figures taken together: from `inner` to `outer` clear of their edge. */
export type Rim = Look & {
  readonly shape: "rim";
  readonly round: readonly Figure[];
  readonly inner: number;
  readonly outer: number;
};

/** One thing in the picture, in grid units. */
export type Figure = Paths | Disc | Box | Arcs | Text | Rim;
