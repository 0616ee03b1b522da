import { hueOf, mixed } from "./oklab.ts";
import { type Colour, light, type Theme, themes, tintShares } from "./tokens.ts";

/** A colour of the theme with a setter's tint mixed in. */
export interface Tinted {
  readonly colour: Colour;
  /** `#rrggbb` */
  readonly tint: string;
}
export type Paint = Colour | Tinted;

/** How a picture's colours are written: `#rrggbb` in a file that stands alone, CSS variables on a page. */
export type Colours = (paint: Paint) => string;

const near = (hue: number, colour: Colour): boolean => {
  const apart = Math.abs(hue - hueOf(light[colour])!) % 360;
  return Math.min(apart, 360 - apart) <= 35;
};

/** Whether a tint could be taken for the colour of a reason or of what follows. */
export const isHeld = (tint: string): boolean => {
  const hue = hueOf(tint);
  return hue !== undefined && (near(hue, "because") || near(hue, "so"));
};

const shareOf = ({ colour, tint }: Tinted): number => {
  const held = isHeld(tint);
  if (colour === "clue") return held ? tintShares.fillHeld : tintShares.fill;
  return held ? tintShares.inkHeld : tintShares.ink;
};

export const coloursOf =
  (theme: Theme): Colours =>
  (paint) =>
    typeof paint === "string" ? themes[theme][paint] : mixed(paint.tint, themes[theme][paint.colour], shareOf(paint));

/** The same as CSS variables, for a page that has them (`cssVariables`). */
export const variables: Colours = (paint) =>
  typeof paint === "string"
    ? `var(--${paint})`
    : `color-mix(in oklab, ${paint.tint} ${shareOf(paint) * 100}%, var(--${paint.colour}))`;
