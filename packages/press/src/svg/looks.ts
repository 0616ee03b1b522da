import type { Colours } from "../colours.ts";
import type { Figure, Fill, PatternName, Pen } from "../scene/figure.ts";
import type { Attributes } from "./element.ts";
import { length } from "./path.ts";
import type { Setting } from "./type.ts";

/** What every element of one picture is written with. */
export interface Context {
  readonly colours: Colours;
  readonly setting: Setting;
  readonly id: string;
}

export const patternId = (id: string, name: PatternName): string => `${id}-${name}`;

const filled = (fill: Fill | undefined, { colours, id }: Context): Attributes => {
  if (fill === undefined) return {};
  return {
    fill: typeof fill === "object" && "pattern" in fill ? `url(#${patternId(id, fill.pattern)})` : colours(fill),
  };
};

export const stroked = (pen: Pen | undefined, { colours }: Context): Attributes =>
  pen === undefined
    ? {}
    : {
        stroke: colours(pen.paint),
        "stroke-width": length(pen.width),
        "stroke-dasharray": pen.dash?.map(length).join(" "),
        "stroke-linecap": pen.cap === "butt" ? undefined : pen.cap,
        "stroke-linejoin": pen.join === "miter" ? undefined : pen.join,
      };

export const looks = (figure: Figure, context: Context): Attributes => ({
  ...filled(figure.fill, context),
  ...stroked(figure.pen, context),
  opacity: figure.opacity?.toString(),
  "data-of": figure.of,
});
