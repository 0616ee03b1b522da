import type { Place } from "@solvewright/engine";
import { centre } from "@solvewright/engine";
import type { Figure } from "../scene/figure.ts";
import { units } from "../tokens.ts";

interface Size {
  readonly size: number;
  readonly step: number;
  /** How far the tray reaches beyond the outer digits' middles, both sides together. */
  readonly beyond: number;
}

const sizes: readonly Size[] = [
  { size: units["mark-2"], step: 0.3, beyond: 0.3 },
  { size: units["mark-2"], step: 0.3, beyond: 0.3 },
  { size: units["mark-3"], step: 0.27, beyond: 0.28 },
  { size: units["mark-4"], step: 0.22, beyond: 0.24 },
  { size: units["mark-5"], step: 0.17, beyond: 0.2 },
];
const twoFigures: Size = { size: 0.28, step: 0.38, beyond: 0.4 };

const rowSize = (digits: readonly number[]): Size =>
  digits.some((digit) => digit > 9) ? twoFigures : sizes[Math.min(digits.length, sizes.length) - 1]!;

/** Rows from the foot up: at most five digits in one, of two figures at most two. */
const rowsOf = (digits: readonly number[]): number[][] => {
  const most = digits.some((digit) => digit > 9) ? 2 : 5;
  const rows = Math.ceil(digits.length / most);
  const long = Math.ceil(digits.length / rows);
  return Array.from({ length: rows }, (_, k) => digits.slice(k * long, (k + 1) * long)).reverse();
};

interface Placed extends Size {
  readonly digit: number;
  readonly x: number;
  readonly y: number;
}

const foot = 0.84;

const placedMarks = (place: Place, digits: readonly number[]): Placed[] => {
  const rows = rowsOf(digits);
  const size = rows.length > 1 ? shrunk(rowSize(digits), rows.length) : rowSize(digits);
  const [middle] = centre(place);
  return rows.flatMap((row, up) =>
    row.map((digit, k) => ({
      ...size,
      digit,
      x: middle + (k - (row.length - 1) / 2) * size.step,
      y: place.row - 1 + foot - up * size.size * 0.92,
    })),
  );
};

/** Many rows share the cell's height. */
const shrunk = (size: Size, rows: number): Size => {
  const share = Math.min(1, 0.78 / (rows * size.size * 0.92));
  return { size: size.size * share, step: size.step * Math.max(share, 0.9), beyond: size.beyond * share };
};

const slash = ({ x, y, size }: Placed): Figure => ({
  shape: "paths",
  layer: "digit",
  paths: [
    {
      points: [
        [x - size * 0.36, y + size * 0.1],
        [x + size * 0.36, y - size * 0.84],
      ],
    },
  ],
  pen: { paint: "gone-text", width: 0.045, cap: "round" },
});

interface MarkLook {
  /** Digits that are taken out now. */
  readonly struck?: readonly number[];
  /** All of them are written now. */
  readonly isNew?: boolean;
}

/** What a cell can be, in a tray at its foot; struck digits are crossed with one slash. */
export const cellMarkFigures = (
  place: Place,
  digits: readonly number[],
  { struck = [], isNew = false }: MarkLook = {},
): Figure[] => {
  const ink = isNew ? "so-text" : "pencil";
  const marks = placedMarks(place, digits);
  if (marks.length === 0) return [];
  const { beyond, size } = marks[0]!;
  const left = Math.min(...marks.map(({ x }) => x)) - beyond / 2;
  const right = Math.max(...marks.map(({ x }) => x)) + beyond / 2;
  const [bottom, top] = [marks[0]!.y, marks.at(-1)!.y - size * 0.78];
  const line = bottom + 0.08;
  const plate: Figure = {
    shape: "box",
    layer: "digit",
    at: [(left + right) / 2, (top + line) / 2],
    width: right - left,
    height: line - top,
    fill: "sheet",
    opacity: 0.86,
  };
  const tray: Figure = {
    shape: "paths",
    layer: "digit",
    paths: [
      {
        points: [
          [left, bottom + 0.02],
          [left, line],
          [right, line],
          [right, bottom + 0.02],
        ],
      },
    ],
    pen: { paint: isNew ? "so" : ink, width: isNew ? 0.03 : 0.015 },
  };
  const digitOf = (mark: Placed): Figure => ({
    shape: "text",
    layer: "digit",
    at: [mark.x, mark.y],
    text: String(mark.digit),
    size: mark.size,
    weight: isNew ? 700 : 500,
    fill: struck.includes(mark.digit) ? "gone-text" : ink,
  });
  return [plate, tray, ...marks.map(digitOf), ...marks.filter(({ digit }) => struck.includes(digit)).map(slash)];
};
