import type { Point } from "@solvewright/engine";

/**
 * Advance widths of Besley's printable ASCII, from the space on, in thousandths of the size, at weights 400 and 800.
 * Source: the fonts of @fontsource/besley; letters.test.ts reads them again.
 */
const advances: Readonly<Record<400 | 800, readonly number[]>> = {
  400: [
    300, 319, 375, 660, 660, 1000, 870, 200, 445, 445, 635, 530, 254, 460, 235, 520, 590, 525, 570, 530, 540, 515, 550,
    524, 530, 550, 235, 254, 560, 560, 560, 550, 1060, 860, 748, 810, 822, 758, 722, 870, 885, 415, 588, 872, 728, 1035,
    875, 830, 690, 830, 772, 672, 775, 840, 860, 1180, 870, 785, 755, 325, 520, 325, 545, 560, 395, 556, 640, 543, 640,
    548, 391, 600, 658, 332, 292, 611, 312, 920, 672, 568, 638, 628, 480, 502, 355, 658, 579, 860, 582, 618, 540, 272,
    300, 272, 688,
  ],
  800: [
    300, 378, 524, 660, 708, 1146, 906, 272, 489, 488, 635, 530, 326, 460, 297, 520, 658, 580, 674, 594, 624, 614, 634,
    580, 614, 634, 235, 254, 560, 560, 560, 576, 1126, 926, 822, 840, 894, 818, 788, 925, 976, 521, 682, 944, 766, 1160,
    934, 888, 770, 888, 903, 722, 800, 910, 926, 1260, 906, 858, 794, 384, 520, 384, 545, 560, 395, 659, 710, 602, 710,
    606, 442, 666, 727, 406, 371, 738, 402, 1046, 750, 626, 710, 698, 610, 559, 450, 742, 652, 922, 686, 689, 575, 345,
    300, 330, 688,
  ],
};

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

/** Other signs of Besley's that puzzles use. */
const others: Readonly<Record<string, number>> = { "×": 502, "’": 239, "–": 716, "“": 439, "”": 439, "·": 198 };

const advanceOf = (letter: string, weight: number): number => {
  const own = ownLetters.get(letter);
  if (own) return own.advance;
  const at = letter.charCodeAt(0) - 32;
  const [light, heavy] = [advances[400][at], advances[800][at]];
  if (light === undefined || heavy === undefined) return (others[letter] ?? 600) / 1000;
  return (light + ((heavy - light) * (weight - 400)) / 400) / 1000;
};

/** How wide a text is set in Besley, in sizes. */
export const widthOf = (text: string, weight: number): number =>
  [...text].reduce((width, letter) => width + advanceOf(letter, weight), 0);

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
