import type { Text } from "../scene/figure.ts";
import { runsOf, widthOf } from "../scene/letters.ts";
import { type Attributes, element, escaped } from "./element.ts";
import { type Context, looks, stroked } from "./looks.ts";
import { dataOf, length } from "./path.ts";
import { rootFace, type Setting, typeOf } from "./type.ts";

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

/** A text, on the ground that it clears round itself where it does. */
export const textElements = (figure: Text, context: Context): string => {
  const own = letters(figure, { fill: context.colours("ink"), ...looks(figure, context) }, context.setting);
  if (!figure.halo) return own;
  const { paint, width } = figure.halo;
  const pen = stroked({ paint, width: 2 * width, join: "round" }, context);
  return letters(figure, { ...pen, opacity: figure.opacity?.toString() }, context.setting) + own;
};
