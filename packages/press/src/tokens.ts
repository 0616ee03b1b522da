/** The look as data. Light is the default; the stage may be dark while the desk is light. */

/** Colours of the light theme, by the name of their CSS variable. */
export const light = {
  desk: "#E6E8DF",
  page: "#F3F4EE",
  sheet: "#FFFFFF",
  "sheet-2": "#F0F1E6",
  "sheet-3": "#E1E4D4",
  stage: "#EEF0E8",
  ink: "#1A211D",
  "ink-2": "#47524B",
  "ink-3": "#5C665F",
  hair: "#90988E",
  rule: "#C6CABF",
  "rule-2": "#DADDD2",
  pencil: "#2B3A4A",
  spruce: "#1E4A40",
  "on-spruce": "#F7F8F3",
  focus: "#1A211D",
  because: "#0072B2",
  "because-text": "#005A8C",
  house: "#D9ECF8",
  so: "#D55E00",
  "so-text": "#A34300",
  "so-wash": "#FCE6D6",
  "rule-use": "#009E73",
  "rule-use-text": "#00664B",
  gone: "#CC79A7",
  "gone-text": "#94366C",
  warn: "#E69F00",
  "warn-text": "#7A5200",
  clue: "#DDE0D8",
  "clue-edge": "#7F877E",
  "clue-ink": "#5A645D",
  "dot-white": "#FFFFFF",
  "dot-edge": "#1A211D",
  "dot-black": "#1A211D",
  "dot-black-edge": "#FFFFFF",
  "wash-rain": "#FBF6C4",
  "wash-rain-line": "#8C8200",
  "wash-weave": "#E4E6E0",
  "wash-weave-line": "#5A645D",
  "wash-scale": "#F6E4EE",
  "wash-scale-line": "#94366C",
  block: "#CBD2C6",
  "block-past": "#DCE0D6",
  "block-now": "#B04A00",
  stall: "#7B857D",
} as const;

export type Colour = keyof typeof light;

export const dark: Readonly<Record<Colour, string>> = {
  desk: "#111613",
  page: "#19201C",
  sheet: "#222A26",
  "sheet-2": "#2D3630",
  "sheet-3": "#38433C",
  stage: "#141916",
  ink: "#ECEEE6",
  "ink-2": "#B9C1BA",
  "ink-3": "#96A099",
  hair: "#6E7B72",
  rule: "#39433D",
  "rule-2": "#2C352F",
  pencil: "#D6E2EE",
  spruce: "#9FD3C2",
  "on-spruce": "#10201A",
  focus: "#ECEEE6",
  because: "#56B4E9",
  "because-text": "#7CC5EF",
  house: "#1F3B4C",
  so: "#F08A3C",
  "so-text": "#FFAE72",
  "so-wash": "#4A2C17",
  "rule-use": "#2FC49A",
  "rule-use-text": "#66D8B6",
  gone: "#CC79A7",
  "gone-text": "#E3A3C6",
  warn: "#E69F00",
  "warn-text": "#F2BE55",
  clue: "#46524B",
  "clue-edge": "#93A097",
  "clue-ink": "#B4BEB6",
  "dot-white": "#F4F5EF",
  "dot-edge": "#F4F5EF",
  "dot-black": "#070A08",
  "dot-black-edge": "#AEB8B0",
  "wash-rain": "#3A3A1C",
  "wash-rain-line": "#D8CB3A",
  "wash-weave": "#3A433E",
  "wash-weave-line": "#AEB8B0",
  "wash-scale": "#40303A",
  "wash-scale-line": "#E3A3C6",
  block: "#3A463F",
  "block-past": "#2A332E",
  "block-now": "#C05A14",
  stall: "#8D988F",
};

export type Theme = "light" | "dark";
export const themes: Readonly<Record<Theme, Readonly<Record<Colour, string>>>> = { light, dark };

/** How much of a setter's tint is mixed, in oklab, into a clue's lines and fills; held back near because and so. */
export const tintShares = { ink: 0.62, fill: 0.4, inkHeld: 0.24, fillHeld: 0.13 } as const;

/** Besley for what is said and what stands on the board, Commissioner for the desk; the names are @fontsource's. */
export const faces = {
  voice: "'Besley Variable', Besley, Georgia, serif",
  desk: "'Commissioner Variable', Commissioner, system-ui, sans-serif",
} as const;

/** Weights and sizes on the board in grid units: 1 cell is 1. */
export const units = {
  hair: 0.015,
  region: 0.04,
  outline: 0.07,
  rail: 0.024,
  "rail-apart": 0.092,
  hachure: 0.022,
  "hachure-long": 0.1,
  so: 0.09,
  // biome-ignore lint/suspicious/noThenProperty: the token's name, never awaited
  then: 0.04,
  house: 0.07,
  ring: 0.06,
  focus: 0.07,
  cage: 0.026,
  clue: 0.04,
  digit: 0.62,
  "mark-2": 0.4,
  "mark-3": 0.37,
  "mark-4": 0.29,
  "mark-5": 0.22,
  spot: 0.29,
  sum: 0.3,
  xv: 0.34,
  clear: 0.055,
} as const;

/** Sizes of type, space, radii, strokes and motion on pages, as CSS has them. */
const page = {
  "t-1": "12px",
  "t-2": "13px",
  "t-3": "14px",
  "t-4": "15.5px",
  "t-5": "18px",
  "t-line": "22.5px",
  "t-6": "27px",
  "t-7": "38px",
  "t-8": "66px",
  "t-9": "92px",
  "t-prompt": "50px",
  "s-1": "4px",
  "s-2": "8px",
  "s-3": "12px",
  "s-4": "18px",
  "s-5": "24px",
  "s-6": "34px",
  "s-7": "44px",
  "s-8": "64px",
  "r-button": "2px",
  "r-key": "3px",
  "r-board": "0",
  "stroke-1": "1px",
  "stroke-2": "1.5px",
  "stroke-3": "5px",
  ease: "cubic-bezier(.2, .7, .2, 1)",
} as const;

/** Durations; all become 0s where reduced motion is asked for. */
const motion = {
  "m-mark": "90ms",
  "m-digit": "140ms",
  "m-reason": "220ms",
  "m-move": "260ms",
  "m-page": "320ms",
} as const;

type Values = Readonly<Record<string, string | number>>;
const declared = (values: Values, prefix = ""): string =>
  Object.entries(values)
    .map(([name, value]) => `--${prefix}${name}: ${value};`)
    .join(" ");

const percents = ({ ink, fill, inkHeld, fillHeld }: typeof tintShares): Values =>
  Object.fromEntries(
    Object.entries({ ink, fill, "ink-held": inkHeld, "fill-held": fillHeld }).map(([name, share]) => [
      name,
      `${share * 100}%`,
    ]),
  );

const still = Object.fromEntries(Object.keys(motion).map((name) => [name, "0s"]));

/** The tokens as CSS variables: light on the root, dark on whatever bears `data-theme="dark"`. */
export const cssVariables = (): string =>
  [
    `:root, [data-theme="light"] { ${declared(light)} }`,
    `:root { ${declared(faces, "face-")} ${declared(page)} ${declared(motion)} ${declared(units, "u-")} ${declared(percents(tintShares), "tint-")} }`,
    `[data-theme="dark"] { ${declared(dark)} }`,
    `@media (prefers-reduced-motion: reduce) { :root { ${declared(still)} } }`,
  ].join("\n");
