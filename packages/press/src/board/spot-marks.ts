import type { Board, House, Place, SpotFact } from "@solvewright/engine";
import type { Paint } from "../colours.ts";
import type { Figure } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import type { Room } from "./room.ts";

/** A shape that lies as the house lies. */
interface Badge {
  readonly width: number;
  readonly height: number;
  readonly round: number;
}
const badges: Readonly<Record<House["shape"], Badge>> = {
  row: { width: 0.46, height: 0.32, round: 0.16 },
  column: { width: 0.3, height: 0.46, round: 0.15 },
  region: { width: 0.36, height: 0.36, round: 0.03 },
  other: { width: 0.36, height: 0.36, round: 0.03 },
};

export interface SpotMark {
  readonly digit: number;
  readonly shape: House["shape"];
  /** What is concluded now stands out. */
  readonly isNew?: boolean;
}

/** The spot marks of each cell, by its name. */
export const spotsByCell = (
  board: Board | undefined,
  spots: readonly SpotFact[],
  isNew = false,
): ReadonlyMap<string, readonly SpotMark[]> => {
  const byCell = new Map<string, SpotMark[]>();
  for (const { digit, cells, house } of spots) {
    const mark = { digit, shape: board?.house(house)?.shape ?? "other", isNew };
    for (const cell of cells) byCell.set(cell, [...(byCell.get(cell) ?? []), mark]);
  }
  return byCell;
};

const inks = (isNew: boolean | undefined): { readonly text: Paint; readonly line: Paint; readonly weight: number } =>
  isNew ? { text: "so-text", line: "so", weight: 800 } : { text: "pencil", line: "pencil", weight: 500 };

const one = ({ digit, shape, isNew }: SpotMark, right: number, top: number, scale: number): Figure[] => {
  const { width, height, round } = badges[shape];
  const at = [right - (width * scale) / 2, top + 0.23 * scale] as const;
  const { text, line, weight } = inks(isNew);
  return [
    {
      shape: "box",
      layer: "digit",
      at,
      width: width * scale,
      height: height * scale,
      round: round * scale,
      fill: "sheet",
      pen: { paint: line, width: (isNew ? 0.04 : 0.022) * Math.sqrt(scale) },
    },
    {
      shape: "text",
      layer: "digit",
      at: [at[0], at[1] + 0.1 * scale],
      text: String(digit),
      size: units.spot * scale * (digit > 9 ? 0.85 : 1),
      weight,
      fill: text,
    },
  ];
};

const margin = 0.07;
const apart = 0.05;
/** Between a corner sum and the first of them. */
const clear = 0.02;

/** More than three are smaller, and all of them share what a corner sum leaves of the cell's width. */
const scaleOf = (marks: readonly SpotMark[], { taken }: Room): number => {
  const width = marks.reduce((sum, { shape }) => sum + badges[shape].width + apart, -apart);
  const free = 1 - margin - Math.max(margin, taken + clear);
  return Math.min(marks.length > 3 ? 0.22 / units.spot : 1, free / width);
};

/** Where a digit can go in a house: at the top right of the cell, the last of them in the corner. */
export const spotMarkFigures = (place: Place, marks: readonly SpotMark[], room: Room): Figure[] => {
  const scale = scaleOf(marks, room);
  const after = (k: number): number =>
    marks.slice(k + 1).reduce((sum, { shape }) => sum + (badges[shape].width + apart) * scale, 0);
  return marks.flatMap((mark, k) => one(mark, place.column - margin - after(k), place.row - 1 + margin, scale));
};
