import type { Colours, Paint } from "../colours.ts";
import { type Extent, extentOf } from "../scene/extent.ts";
import type { Figure, PatternName, Rim } from "../scene/figure.ts";
import { figuresOf, type Scene } from "../scene/scene.ts";
import { type Colour, faces } from "../tokens.ts";
import { element, escaped } from "./element.ts";
import { joinedLines } from "./joined-lines.ts";
import { type Context, looks, patternId } from "./looks.ts";
import { arcData, dataOf, length } from "./path.ts";
import { patternElement } from "./patterns.ts";
import { maskOf } from "./rim.ts";
import { textElements } from "./text.ts";
import { rootFace, type Setting } from "./type.ts";

export interface SvgOptions {
  readonly extent: Extent;
  readonly colours: Colours;
  /** The picture's name for those who do not see it. */
  readonly label: string;
  /** The colour behind everything; see-through where left out. */
  readonly ground?: Colour;
  /** Pixels a cell. Left out, the picture fills what it stands in. */
  readonly cell?: number;
  /** CSS that brings the fonts, for a file that stands alone. */
  readonly fontCss?: string;
  /** How the fonts are named: for browsers where not said. */
  readonly setting?: Setting;
  /** Begins the ids inside, so that several pictures can stand on one page. */
  readonly id?: string;
}

const plain: Context["colours"] = (paint: Paint) => (paint === "dot-white" ? "#fff" : "#000");

const rimElements = (figure: Rim, at: number, context: Context): string => {
  const { left, top, right, bottom } = extentOf(figure);
  const id = `${context.id}-rim-${at}`;
  const { shown, hidden } = maskOf(figure);
  const inside = [...shown, ...hidden].map((part) => elementsOf(part, 0, { ...context, colours: plain })).join("");
  const area = { x: length(left), y: length(top), width: length(right - left), height: length(bottom - top) };
  return (
    element("mask", { id, maskUnits: "userSpaceOnUse", ...area }, inside) +
    element("rect", { ...area, ...looks(figure, context), mask: `url(#${id})` })
  );
};

/** `at` tells figures of one layer apart. */
const elementsOf = (figure: Figure, at: number, context: Context): string => {
  const attributes = looks(figure, context);
  switch (figure.shape) {
    case "paths":
      return element("path", {
        d: dataOf(figure.paths),
        "fill-rule": figure.fill ? "evenodd" : undefined,
        ...attributes,
      });
    case "disc":
      return element("circle", {
        cx: length(figure.at[0]),
        cy: length(figure.at[1]),
        r: length(figure.radius),
        ...attributes,
      });
    case "box": {
      const { at: middle, width, height, round } = figure;
      const corner = { x: length(middle[0] - width / 2), y: length(middle[1] - height / 2) };
      return element("rect", {
        ...corner,
        width: length(width),
        height: length(height),
        rx: round ? length(round) : undefined,
        ...attributes,
      });
    }
    case "arcs":
      return element("path", { d: arcData(figure.at, figure.radii, figure.spans), ...attributes });
    case "text":
      return textElements(figure, context);
    case "rim":
      return rimElements(figure, at, context);
  }
};

const patternsIn = (scene: Scene): PatternName[] => {
  const names = figuresOf(scene).flatMap(({ fill }) =>
    typeof fill === "object" && "pattern" in fill ? [fill.pattern] : [],
  );
  return [...new Set(names)];
};

const definitions = (scene: Scene, { fontCss }: SvgOptions, { colours, id }: Context): string => {
  const patterns = patternsIn(scene).map((name) => patternElement(name, patternId(id, name), colours));
  return (
    (fontCss ? element("style", {}, escaped(fontCss)) : "") +
    (patterns.length > 0 ? element("defs", {}, patterns.join("\n")) : "")
  );
};

const layersIn = (scene: Scene, context: Context): string[] => {
  let at = 0;
  return scene.layers.map(({ name, figures }) =>
    element(
      "g",
      { "data-layer": name },
      joinedLines(figures)
        .map((figure) => `\n${elementsOf(figure, at++, context)}`)
        .join(""),
    ),
  );
};

const pixels = (cells: number, cell: number | undefined): string | undefined =>
  cell === undefined ? undefined : String(Math.round(cells * cell * 1000) / 1000);

/** Writes a scene as SVG. Pure text: what it needs of fonts and colours stands in the options. */
export const svgOf = (scene: Scene, options: SvgOptions): string => {
  const { extent, cell, colours, label, ground, setting = "variable", id = "board" } = options;
  const context = { colours, setting, id };
  const [width, height] = [extent.right - extent.left, extent.bottom - extent.top];
  const place = { x: length(extent.left), y: length(extent.top), width: length(width), height: length(height) };
  const pieces = [
    definitions(scene, options, context),
    ground ? element("rect", { ...place, fill: colours(ground) }) : "",
    ...layersIn(scene, context),
  ];
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: Object.values(place).join(" "),
      width: pixels(width, cell),
      height: pixels(height, cell),
      role: "img",
      "aria-label": label,
      "font-family": faces[rootFace],
      fill: "none",
    },
    `\n${pieces.filter((piece) => piece !== "").join("\n")}\n`,
  );
};
