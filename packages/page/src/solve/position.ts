import type { Position, SpotFact } from "@solvewright/engine";

export type { Position };

export const nothing: Position = { settled: {}, marks: {}, spots: [] };

export const marksAt = ({ marks }: Position, cell: string): readonly number[] => marks[cell] ?? [];
export const isSettled = ({ settled }: Position, cell: string): boolean => settled[cell] !== undefined;

export const spotOf = ({ spots }: Position, digit: number, house: string): SpotFact | undefined =>
  spots.find((spot) => spot.digit === digit && spot.house === house);

export const isBlank = ({ settled, marks, spots }: Position): boolean =>
  Object.keys(settled).length + Object.keys(marks).length + spots.length === 0;
