import type { Colours, Paint } from "../colours.ts";
import { type Extent, extentOf } from "../scene/extent.ts";
import type { Figure, Fill, PatternName, Pen, Rim, Text } from "../scene/figure.ts";
import { runsOf, widthOf } from "../scene/letters.ts";
import { figuresOf, type Scene } from "../scene/scene.ts";
import { type Colour, faces } from "../tokens.ts";
import { type Attributes, element, escaped } from "./element.ts";
import { arcData, dataOf, length } from "./path.ts";
import { patternElement } from "./patterns.ts";
import { maskOf } from "./rim.ts";
import { rootFace, type Setting, typeOf } from "./type.ts";

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

interface Context {
  readonly colours: Colours;
  readonly setting: Setting;
  readonly id: string;
}

const patternId = (id: string, name: PatternName): string => `${id}-${name}`;

const filled = (fill: Fill | undefined, { colours, id }: Context): Attributes => {
  if (fill === undefined) return {};
  return {
    fill: typeof fill === "object" && "pattern" in fill ? `url(#${patternId(id, fill.pattern)})` : colours(fill),
  };
};

const stroked = (pen: Pen | undefined, { colours }: Context): Attributes =>
  pen === undefined
    ? {}
    : {
        stroke: colours(pen.paint),
        "stroke-width": length(pen.width),
        "stroke-dasharray": pen.dash?.map(length).join(" "),
        "stroke-linecap": pen.cap === "butt" ? undefined : pen.cap,
        "stroke-linejoin": pen.join === "miter" ? undefined : pen.join,
      };

const looks = (figure: Figure, context: Context): Attributes => ({
  ...filled(figure.fill, context),
  ...stroked(figure.pen, context),
  opacity: figure.opacity?.toString(),
  "data-of": figure.of,
});

const starts = ({ at: [x], text, size, weight = 500, anchor = "middle" }: Text): number =>
  x - { start: 0, middle: 0.5, end: 1 }[anchor] * widthOf(text, weight) * size;

const ownPaths = (
  { at: [, y], size }: Text,
  x: number,
  outlines: readonly (readonly (readonly [number, number])[])[],
) =>
  dataOf(
    outlines.map((points) => ({
      points: points.map(([dx, dy]) => [x + dx * size, y + dy * size] as const),
      closed: true,
    })),
  );

/** The text itself: one element where the font has all of it, else pieces with our own letters between. */
const letters = (figure: Text, attributes: Attributes, setting: Setting): string => {
  const { at, text, size, weight = 500, face = rootFace, anchor = "middle" } = figure;
  const type = { "font-size": length(size), ...typeOf(setting, face, weight) };
  const set = (x: number, from: string, content: string): string =>
    element(
      "text",
      { x: length(x), y: length(at[1]), "text-anchor": from === "start" ? undefined : from, ...type, ...attributes },
      escaped(content),
    );
  const runs = runsOf(text, weight);
  if (runs.every((run) => "text" in run)) return set(at[0], anchor, text);
  const left = starts(figure);
  return runs
    .map((run) =>
      "text" in run
        ? set(left + run.x * size, "start", run.text)
        : element("path", { d: ownPaths(figure, left + run.x * size, run.own.outlines), ...attributes }),
    )
    .join("");
};

const textElements = (figure: Text, context: Context): string => {
  const own = letters(figure, { fill: context.colours("ink"), ...looks(figure, context) }, context.setting);
  if (!figure.halo) return own;
  const { paint, width } = figure.halo;
  const pen = stroked({ paint, width: 2 * width, join: "round" }, context);
  return letters(figure, { ...pen, opacity: figure.opacity?.toString() }, context.setting) + own;
};

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
    element("g", { "data-layer": name }, figures.map((figure) => `\n${elementsOf(figure, at++, context)}`).join("")),
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
