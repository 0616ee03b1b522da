import { nameOf, type Place } from "@solvewright/engine";
import type { HouseData, PageData } from "@solvewright/press";

/** One cell of the board with everything looked up. */
export interface GroundCell {
  readonly name: string;
  readonly place: Place;
  readonly said: string;
  readonly clues: readonly string[];
  /** Indices of its grids, the topmost first. */
  readonly grids: readonly number[];
  /** The digits that all its grids have. */
  readonly digits: readonly number[];
  /** Those of the topmost grid first. */
  readonly houses: readonly HouseData[];
  readonly sees: ReadonlySet<string>;
  readonly given?: number;
}

/** What does not change while a puzzle is solved. */
export interface Ground {
  readonly data: PageData;
  /** By name, in reading order. */
  readonly cells: ReadonlyMap<string, GroundCell>;
  readonly houses: ReadonlyMap<string, HouseData>;
  /** Every digit of any grid, ascending. */
  readonly digits: readonly number[];
  /** There are digits above 9, so a typed number has an end. */
  readonly isLong: boolean;
}

const covers = ({ row, column, size }: PageData["puzzle"]["grids"][number], place: Place): boolean =>
  place.row >= row && place.row < row + size && place.column >= column && place.column < column + size;

/** Later grids lie on top. */
const topmostFirst = (a: HouseData, b: HouseData): number => (b.grid ?? -1) - (a.grid ?? -1);

const cellsOf = (data: PageData): Map<string, GroundCell> => {
  const { grids, givens } = data.puzzle;
  const together = [...data.houses.map(({ cells }) => cells), ...data.groups];
  return new Map(
    data.places.map((place, k) => {
      const name = nameOf(place);
      const under = grids.flatMap((grid, index) => (covers(grid, place) ? [index] : [])).reverse();
      const seen = new Set(together.filter((cells) => cells.includes(name)).flat());
      seen.delete(name);
      const given = givens[name];
      return [
        name,
        {
          name,
          place,
          ...data.cells[k]!,
          grids: under,
          digits: grids[under[0]!]!.digits.filter((digit) =>
            under.every((grid) => grids[grid]!.digits.includes(digit)),
          ),
          houses: data.houses.filter(({ cells }) => cells.includes(name)).sort(topmostFirst),
          sees: seen,
          ...(given === undefined ? {} : { given }),
        },
      ];
    }),
  );
};

export const groundOf = (data: PageData): Ground => {
  const digits = [...new Set(data.puzzle.grids.flatMap((grid) => grid.digits))].sort((a, b) => a - b);
  return {
    data,
    cells: cellsOf(data),
    houses: new Map(data.houses.map((house) => [house.id, house])),
    digits,
    isLong: digits.some((digit) => digit > 9),
  };
};

export const cellIn = ({ cells }: Ground, name: string): GroundCell => cells.get(name)!;
export const isOpen = (ground: Ground, cell: string): boolean => cellIn(ground, cell).given === undefined;
