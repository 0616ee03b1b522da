import type { HouseData } from "@solvewright/press";
import { cellIn, type Ground, isOpen } from "./ground.ts";
import { isSettled, marksAt, type Position, spotOf } from "./position.ts";

/** The houses in which a spot mark can be put: the letters R, C and B. */
export type SpotShape = "row" | "column" | "region";

const withMarks = (position: Position, cell: string, marks: readonly number[]): Position => {
  const { [cell]: _, ...others } = position.marks;
  const sorted = [...new Set(marks)].sort((a, b) => a - b);
  return { ...position, marks: sorted.length === 0 ? others : { ...others, [cell]: sorted } };
};

const withoutDigit = (position: Position, cell: string): Position => {
  const { [cell]: _, ...settled } = position.settled;
  return { ...position, settled };
};

const withSpot = (position: Position, digit: number, house: string, cells: readonly string[]): Position => {
  const spots = position.spots.filter((spot) => spot.digit !== digit || spot.house !== house);
  return { ...position, spots: cells.length === 0 ? spots : [...spots, { digit, house, cells }] };
};

const openIn = (ground: Ground, position: Position, cells: readonly string[]): string[] =>
  cells.filter((cell) => isOpen(ground, cell) && !isSettled(position, cell));

const toggled = (position: Position, cells: readonly string[], digit: number): Position => {
  const isOut = cells.every((cell) => marksAt(position, cell).includes(digit));
  return cells.reduce((next, cell) => {
    const others = marksAt(next, cell).filter((mark) => mark !== digit);
    return withMarks(next, cell, isOut ? others : [...others, digit]);
  }, position);
};

/** Where only settled cells are chosen, typing their digit takes it out, another begins them anew as a mark. */
const rewritten = (position: Position, cells: readonly string[], digit: number): Position =>
  cells.reduce((next, cell) => {
    const isSame = position.settled[cell] === digit;
    return withMarks(withoutDigit(next, cell), cell, isSame ? marksAt(next, cell) : [digit]);
  }, position);

/** A digit typed into the chosen cells: a mark in each that can hold it, or taken out where all of them have it. */
export const marked = (ground: Ground, position: Position, cells: readonly string[], digit: number): Position => {
  const able = cells.filter((cell) => isOpen(ground, cell) && cellIn(ground, cell).digits.includes(digit));
  const open = openIn(ground, position, able);
  return open.length > 0 ? toggled(position, open, digit) : rewritten(position, able, digit);
};

/** The house of that shape in which a cell's spot marks go; `turn` takes the other grids' in turn. */
export const spotHouse = (ground: Ground, cell: string, shape: SpotShape, turn: number): HouseData | undefined => {
  const houses = cellIn(ground, cell).houses.filter((house) => house.shape === shape);
  return houses[turn % houses.length];
};

/** Says, for each chosen cell's own row, column or region, that its digit is in one of these; again takes that out. */
export const spotted = (
  ground: Ground,
  position: Position,
  cells: readonly string[],
  digit: number,
  shape: SpotShape,
  turn: number,
): Position => {
  const byHouse = new Map<string, string[]>();
  for (const cell of openIn(ground, position, cells)) {
    const house = spotHouse(ground, cell, shape, turn);
    if (house && cellIn(ground, cell).digits.includes(digit))
      byHouse.set(house.id, [...(byHouse.get(house.id) ?? []), cell]);
  }
  const standing = (house: string): readonly string[] => spotOf(position, digit, house)?.cells ?? [];
  const isOut = [...byHouse].every(([house, own]) => own.every((cell) => standing(house).includes(cell)));
  return [...byHouse].reduce((next, [house, own]) => {
    const others = standing(house).filter((cell) => !own.includes(cell));
    return withSpot(next, digit, house, isOut ? others : inOrder(ground, [...others, ...own]));
  }, position);
};

const inOrder = (ground: Ground, cells: readonly string[]): string[] =>
  [...ground.cells.keys()].filter((cell) => cells.includes(cell));

/** The chosen cells that hold exactly one mark, and so can be settled. */
export const settleable = (ground: Ground, position: Position, cells: readonly string[]): string[] =>
  openIn(ground, position, cells).filter((cell) => marksAt(position, cell).length === 1);

/** Settles them; with `clears`, marks that the new digits strike go at once. */
export const settled = (ground: Ground, position: Position, cells: readonly string[], clears: boolean): Position =>
  settleable(ground, position, cells).reduce((next, cell) => {
    // One that was settled just before may have struck it.
    const digit = marksAt(position, cell)[0]!;
    const placed = { ...withMarks(next, cell, []), settled: { ...next.settled, [cell]: digit } };
    return clears ? struck(ground, placed, cell, digit) : placed;
  }, position);

const struck = (ground: Ground, position: Position, from: string, digit: number): Position => {
  const { sees } = cellIn(ground, from);
  const marks = Object.keys(position.marks)
    .filter((cell) => sees.has(cell))
    .reduce(
      (next, cell) =>
        withMarks(
          next,
          cell,
          marksAt(next, cell).filter((mark) => mark !== digit),
        ),
      position,
    );
  return position.spots.reduce((next, spot) => {
    const isDone = spot.digit === digit && ground.houses.get(spot.house)?.cells.includes(from);
    const left = spot.cells.filter((cell) => cell !== from && (spot.digit !== digit || !sees.has(cell)));
    return withSpot(next, spot.digit, spot.house, isDone ? [] : left);
  }, marks);
};

/** Takes out of the chosen cells what is largest in them: settled digits, else marks, else their place in spot marks. */
export const cleared = (ground: Ground, position: Position, cells: readonly string[]): Position => {
  const own = cells.filter((cell) => isOpen(ground, cell));
  const large = own.filter((cell) => isSettled(position, cell));
  if (large.length > 0) return large.reduce(withoutDigit, position);
  const small = own.filter((cell) => marksAt(position, cell).length > 0);
  if (small.length > 0) return small.reduce((next, cell) => withMarks(next, cell, []), position);
  return position.spots.reduce(
    (next, { digit, house, cells: places }) =>
      withSpot(
        next,
        digit,
        house,
        places.filter((cell) => !own.includes(cell)),
      ),
    position,
  );
};
