/** A point in grid units: x to the right, y down, one cell is 1 x 1, the canvas's top left corner is [0, 0]. */
export type Point = readonly [x: number, y: number];

/** What a stroke or a fill is for; the picture's theme gives it its colour, a rule's tint colours the first three. */
export type Ink =
  | "clue"
  | "clue-edge"
  | "clue-ink"
  | "ink"
  | "sheet"
  | "dot-white"
  | "dot-edge"
  | "dot-black"
  | "dot-black-edge";

/**
 * Where in the order of drawing it lies: under the digits, with the cages, over the digits, or outside the grid. A
 * `sign` stands beside the rule's sentence under the board; it is drawn in the square from [0, 0] to [1, 1].
 */
export type Layer = "area" | "line" | "cage" | "edge" | "outside" | "sign";

export interface Stroke {
  readonly ink: Ink;
  readonly width: number;
  /** Lengths of dashes and gaps, in grid units. */
  readonly dash?: readonly number[];
  readonly cap?: "butt" | "round" | "square";
}

interface Drawn {
  readonly layer: Layer;
  readonly fill?: Ink;
  readonly stroke?: Stroke;
  /** From 0 to 1; 1 where it is not said. */
  readonly opacity?: number;
}

/** What is drawn of a clue, in grid units. A kind draws with these and nothing else. */
export type Shape =
  /** Straight pieces from point to point; corners softened over `round` on each side, closed into an area on request. */
  | (Drawn & {
      readonly shape: "line";
      readonly points: readonly Point[];
      readonly round?: number;
      readonly closed?: boolean;
    })
  | (Drawn & { readonly shape: "disc"; readonly at: Point; readonly radius: number })
  /** A rectangle by its middle. */
  | (Drawn & {
      readonly shape: "box";
      readonly at: Point;
      readonly width: number;
      readonly height: number;
      readonly round?: number;
    })
  /** Words or numbers; `at` is the middle of the baseline unless anchored otherwise. A plate clears the ground behind. */
  | (Drawn & {
      readonly shape: "text";
      readonly at: Point;
      readonly text: string;
      readonly size: number;
      readonly weight?: number;
      readonly anchor?: "start" | "middle" | "end";
      readonly plate?: boolean;
    });
