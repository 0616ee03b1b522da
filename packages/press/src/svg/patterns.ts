import type { Colours, Paint } from "../colours.ts";
import type { PatternName } from "../scene/figure.ts";
import { element } from "./element.ts";
import { length } from "./path.ts";

interface Pattern {
  readonly width: number;
  readonly height: number;
  readonly turn?: number;
  readonly paint: Paint;
  readonly opacity?: number;
  readonly pen?: number;
  readonly round?: boolean;
  /** Path data in hundredths of a cell. */
  readonly data: string;
}

const patterns: Readonly<Record<PatternName, Pattern>> = {
  // Upright stripes turned by 45 degrees: they rise to the right.
  hatch: { width: 0.13, height: 0.13, turn: 45, paint: "because", opacity: 0.5, data: "M0 0h4v13h-4z" },
  dots: { width: 0.16, height: 0.16, paint: "gone", data: "M4.8 8a3.2 3.2 0 1 0 6.4 0a3.2 3.2 0 1 0-6.4 0z" },
  rain: { width: 0.14, height: 0.26, paint: "wash-rain-line", pen: 0.018, round: true, data: "M4 3v9M11 16v9" },
  weave: { width: 0.22, height: 0.22, paint: "wash-weave-line", pen: 0.018, data: "M5 2v6M2 5h6M16 13v6M13 16h6" },
  scale: {
    width: 0.24,
    height: 0.18,
    paint: "wash-scale-line",
    pen: 0.016,
    data: "M0 4q6 9 12 0q6 9 12 0M-12 13q6 9 12 0q6 9 12 0q6 9 12 0",
  },
};

/** A pattern's definition, by the id that fills refer to. */
export const patternElement = (name: PatternName, id: string, colours: Colours): string => {
  const { width, height, turn, paint, opacity, pen, round, data } = patterns[name];
  const stroke = pen ? { fill: "none", stroke: colours(paint), "stroke-width": length(pen) } : { fill: colours(paint) };
  const drawing = element("path", {
    d: data,
    ...stroke,
    "stroke-linecap": round ? "round" : undefined,
    opacity: opacity?.toString(),
  });
  return element(
    "pattern",
    {
      id,
      width: length(width),
      height: length(height),
      patternUnits: "userSpaceOnUse",
      patternTransform: turn ? `rotate(${turn})` : undefined,
    },
    drawing,
  );
};
