import type { Point } from "@solvewright/engine";
import type { Face } from "../svg/type.ts";
import { advances } from "./advances.ts";

/** A sign that Besley lacks, drawn by us: its outline in sizes, from the left end of the baseline, y down. */
export interface OwnLetter {
  readonly advance: number;
  readonly outlines: readonly (readonly Point[])[];
}

const bar = (y: number, left = 0.06, right = 0.5): Point[] => [
  [left, y - 0.045],
  [right, y - 0.045],
  [right, y + 0.045],
  [left, y + 0.045],
];

const angle = (tip: number, open: number): Point[] => {
  const aside = (x: number, by: number): number => x + Math.sign(tip - open) * by;
  return [
    [open, -0.66],
    [tip, -0.44],
    [tip, -0.36],
    [open, -0.14],
    [open, -0.24],
    [aside(tip, -0.13), -0.4],
    [open, -0.56],
  ];
};

/** What Besley's latin files lack. */
const ownLetters: ReadonlyMap<string, OwnLetter> = new Map([
  [
    "Σ",
    {
      advance: 0.72,
      outlines: [
        [
          [0.05, -0.75],
          [0.63, -0.75],
          [0.63, -0.53],
          [0.575, -0.53],
          [0.54, -0.66],
          [0.25, -0.66],
          [0.44, -0.39],
          [0.21, -0.1],
          [0.56, -0.1],
          [0.605, -0.25],
          [0.66, -0.25],
          [0.65, 0],
          [0.05, 0],
          [0.05, -0.07],
          [0.3, -0.375],
          [0.05, -0.69],
        ],
      ],
    },
  ],
  ["≡", { advance: 0.56, outlines: [bar(-0.56), bar(-0.38), bar(-0.2)] }],
  ["≤", { advance: 0.56, outlines: [angle(0.06, 0.5), bar(0)] }],
  ["≥", { advance: 0.56, outlines: [angle(0.5, 0.06), bar(0)] }],
  [
    "≠",
    {
      advance: 0.56,
      outlines: [
        bar(-0.47),
        bar(-0.28),
        [
          [0.36, -0.7],
          [0.45, -0.7],
          [0.2, -0.05],
          [0.11, -0.05],
        ],
      ],
    },
  ],
]);

const advanceOf = (letter: string, weight: number, face: Face): number => {
  const own = ownLetters.get(letter);
  if (own) return own.advance;
  const [at, { 400: lights, 800: heavies, others }] = [letter.charCodeAt(0) - 32, advances[face]];
  const [light, heavy] = [lights[at], heavies[at]];
  if (light === undefined || heavy === undefined) return (others[letter] ?? 600) / 1000;
  return (light + ((heavy - light) * (weight - 400)) / 400) / 1000;
};

/** How wide a text is set, in sizes. */
export const widthOf = (text: string, weight: number, face: Face = "voice"): number =>
  [...text].reduce((width, letter) => width + advanceOf(letter, weight, face), 0);

/** A stretch of a text: letters of the font, or one of our own; `x` is its start in sizes. */
export type Run = { readonly x: number } & ({ readonly text: string } | { readonly own: OwnLetter });

/** A text cut where letters of our own stand in it. */
export const runsOf = (text: string, weight: number): Run[] => {
  const pieces = text.split(/([Σ≡≤≥≠])/u).filter((piece) => piece !== "");
  return pieces.map((piece, k): Run => {
    const own = ownLetters.get(piece);
    // Spaces at the start of a text element are not set, so it starts behind them.
    const [spaces] = /^\s*/.exec(piece)!;
    const x = widthOf(pieces.slice(0, k).join("") + spaces, weight);
    return own ? { x, own } : { x, text: piece.trim() };
  });
};

/** A text in lines no wider than `width` sizes. */
export const wrapped = (text: string, weight: number, width: number): string[] => {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && widthOf(longer, weight) <= width) lines.splice(-1, 1, longer);
    else lines.push(word);
  }
  return lines;
};
