/** Oklab (Björn Ottosson, https://bottosson.github.io/posts/oklab/): the space in which CSS's color-mix mixes here. */
export interface Oklab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
const gamma = (light: number): number => (light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055);

/** The three channels of `#rrggbb`, from 0 to 1, as light and not as gamma has them. */
export const lightOf = (hex: string): [red: number, green: number, blue: number] => {
  const channel = (at: number): number => linear(Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return [channel(1), channel(3), channel(5)];
};

export const oklabOf = (hex: string): Oklab => {
  const [red, green, blue] = lightOf(hex);
  const l = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
  const m = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
  const s = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
  return {
    l: 0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    a: 1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    b: 0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  };
};

const hexOf = ({ l: lightness, a, b }: Oklab): string => {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const channels = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  const byte = (light: number): number => Math.round(255 * Math.min(1, Math.max(0, gamma(light))));
  return `#${channels.map((light) => byte(light).toString(16).padStart(2, "0")).join("")}`;
};

/** `share` of the one colour, from 0 to 1, and the rest of the other. */
export const mixed = (one: string, other: string, share: number): string => {
  const [x, y] = [oklabOf(one), oklabOf(other)];
  const between = (p: number, q: number): number => p * share + q * (1 - share);
  return hexOf({ l: between(x.l, y.l), a: between(x.a, y.a), b: between(x.b, y.b) });
};

/** Degrees from the red axis; undefined where there is no colour to speak of. */
export const hueOf = (hex: string): number | undefined => {
  const { a, b } = oklabOf(hex);
  return Math.hypot(a, b) < 0.02 ? undefined : (Math.atan2(b, a) * 180) / Math.PI;
};
