import type { SpotFact } from "@solvewright/engine";
import { nothing, type Position } from "./position.ts";

/** One thing that becomes another: a cell's digit, a cell's marks, or where a digit can go in a house. */
export type Piece =
  | { readonly settled: string; readonly from: number | null; readonly to: number | null }
  | { readonly marks: string; readonly from: readonly number[]; readonly to: readonly number[] }
  | {
      readonly spot: { readonly digit: number; readonly house: string };
      readonly from: readonly string[];
      readonly to: readonly string[];
    };

/** What one act of the solver does to the board. It can be undone without knowing what stood there. */
export type Change = readonly Piece[];

type Table<T> = Readonly<Record<string, T>>;
const without = <T>(table: Table<T>, key: string): Table<T> =>
  Object.fromEntries(Object.entries(table).filter(([name]) => name !== key));

const applied = (position: Position, piece: Piece): Position => {
  if ("settled" in piece) {
    const { settled: cell, to } = piece;
    const settled = to === null ? without(position.settled, cell) : { ...position.settled, [cell]: to };
    return { ...position, settled };
  }
  if ("marks" in piece) {
    const { marks: cell, to } = piece;
    return { ...position, marks: to.length === 0 ? without(position.marks, cell) : { ...position.marks, [cell]: to } };
  }
  const { digit, house } = piece.spot;
  const others = position.spots.filter((spot) => spot.digit !== digit || spot.house !== house);
  const spots = piece.to.length === 0 ? others : [...others, { digit, house, cells: piece.to }];
  return { ...position, spots: spots.sort(bySpot) };
};

/** One order for all, so that a change undone leaves no trace. */
const bySpot = (a: SpotFact, b: SpotFact): number => a.digit - b.digit || (a.house < b.house ? -1 : 1);

export const apply = (change: Change, position: Position): Position => change.reduce(applied, position);

export const invert = (change: Change): Change =>
  change.map((piece): Piece => ({ ...piece, from: piece.to, to: piece.from }) as Piece).reverse();

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? []) === JSON.stringify(b ?? []);

/** From one position to another. */
export const changeBetween = (from: Position, to: Position): Change => {
  const keys = (a: object, b: object): string[] => [...new Set([...Object.keys(a), ...Object.keys(b)])];
  const spots = [
    ...new Map([...from.spots, ...to.spots].map((spot) => [`${spot.digit} ${spot.house}`, spot])).values(),
  ];
  const cellsOf = ({ spots }: Position, digit: number, house: string): readonly string[] =>
    spots.find((spot) => spot.digit === digit && spot.house === house)?.cells ?? [];
  const pieces: Piece[] = [
    ...keys(from.settled, to.settled).map((cell) => ({
      settled: cell,
      from: from.settled[cell] ?? null,
      to: to.settled[cell] ?? null,
    })),
    ...keys(from.marks, to.marks).map((cell) => ({
      marks: cell,
      from: from.marks[cell] ?? [],
      to: to.marks[cell] ?? [],
    })),
    ...spots.map(({ digit, house }) => ({
      spot: { digit, house },
      from: cellsOf(from, digit, house),
      to: cellsOf(to, digit, house),
    })),
  ];
  return pieces.filter((piece) => !same(piece.from, piece.to));
};

/** Takes everything out. */
export const emptying = (position: Position): Change => changeBetween(position, nothing);
