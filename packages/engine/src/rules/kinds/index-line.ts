import { digitsOf } from "../../board/digits.ts";
import { rulerAlong } from "../../marks/ruler.ts";
import type { Cell, Place } from "../../puzzle/canvas.ts";
import { aDigit, ordinal } from "../../speech/english/counts.ts";
import { pairTerms } from "../../terms/make.ts";
import { accounting, canBe, digitIn, forAll } from "../because/known-sums.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { cellsAt, cellsIn } from "../cells.ts";
import { type Asked, type Bound, faulty, type Kind } from "../contract.ts";
import { digitsText } from "../in-words.ts";
import { lineSaid } from "../outside-clue.ts";
import { lineOf, type OutsideLine } from "../outside-line.ts";

interface IndexLine extends Bound {
  readonly line: OutsideLine;
  readonly said: string;
  /** The places of the named cells, from 1. */
  readonly places: readonly number[];
  /** For each cell of the line: it, then the cells that it may name. */
  readonly across: readonly (readonly Cell[])[];
}

/** Where the first names the place of the second, the second is the line's number. */
const points =
  (place: number, number: number) =>
  (first: number, second: number): boolean =>
    first !== place || second === number;

/** Read across the line; the state is the place that its digit names. */
const reading = (cells: readonly Cell[], { places, line: { number } }: IndexLine) => ({
  cells,
  start: 0,
  next: (named: number | string, digit: number, index: number): number | undefined => {
    if (index === 0) return digit;
    return points(places[index - 1]!, number)(Number(named), digit) ? Number(named) : undefined;
  },
  ok: () => true,
});

interface Pointing {
  /** The cell that points, the cell that it would point at, and the place of that, from 1. */
  readonly pointer: Cell;
  readonly pointed: Cell;
  readonly place: number;
}

const pointingsOf = ({ across, places }: IndexLine): Pointing[] =>
  across.flatMap(([pointer, ...others]) =>
    others.map((pointed, k) => ({ pointer: pointer!, pointed, place: places[k]! })),
  );

/** Why a pair rules a digit out of one of its cells; that the number stands once in its row takes that row. */
const whyNot = (
  { line: { number } }: IndexLine,
  asked: Asked,
  pair: Pointing,
  cell: Cell,
  digit: number,
): string | undefined => {
  const { pointer, pointed, place } = pair;
  const nth = `the ${ordinal(place)} cell`;
  const isOnce = asked.differ(pointer, pointed);
  if (cell === pointed && digit === number)
    return !isOnce || canBe(pointer, place, asked)
      ? undefined
      : `${aDigit(number)} in ${nth} would want ${aDigit(place)} as its index digit, which can't be`;
  if (cell === pointed)
    return digitIn(pointer, asked) === place ? `its index digit ${place} puts the ${number} there` : undefined;
  if (digit === place)
    return canBe(pointed, number, asked)
      ? undefined
      : `${aDigit(place)} would put the ${number} in ${nth}, which can't be`;
  return isOnce && digitIn(pointed, asked) === number ? `the ${number} stands in ${nth}` : undefined;
};

const because = (index: IndexLine, asked: Asked): string | undefined =>
  forAll(asked, (cell, out) => {
    const pairs = pointingsOf(index).filter(({ pointer, pointed }) => pointer === cell || pointed === cell);
    const whyOf = (digit: number): string | undefined =>
      pairs.map((pair) => whyNot(index, asked, pair, cell, digit)).find((said) => said !== undefined);
    return accounting(out, whyOf);
  });

export const indexLine: Kind<OutsideBody, IndexLine> = {
  name: "index-line",
  body: outside({ numbers: {}, from: false }),
  resolve: (body, setting) => {
    const line = lineOf(body, setting);
    if ("faults" in line) return line;
    const { grid, axis, number } = line;
    if (grid.digits.some((digit, k) => digit !== k + 1)) {
      const read = `the digits ${digitsText(digitsOf(grid.digits))}`;
      return faulty({ at: [axis], read, right: `a line of a grid with the digits 1 to ${grid.size}` });
    }
    const places = grid.digits.filter((place) => place !== number);
    const across = line.places.map(({ row, column }) => {
      const at = (place: number): Place => ({
        row: axis === "row" ? grid.row + place - 1 : row,
        column: axis === "row" ? column : grid.column + place - 1,
      });
      return cellsAt(setting, [{ row, column }, ...places.map(at)]);
    });
    return { cells: cellsIn(setting, [grid]), line, said: lineSaid(line, setting), places, across };
  },
  scopes: (index) => index.across.map((cells) => reading(cells, index)),
  terms: ({ id, across, places, line: { number } }) =>
    places.flatMap((place, k) =>
      pairTerms(
        id,
        across.map((cells) => [cells[0]!, cells[k + 1]!]),
        points(place, number),
      ),
    ),
  marks: ({ line }) => rulerAlong(line.places),
  words: ({ line: { axis, number, cells }, said }) => {
    const [across, from] = axis === "row" ? ["column", "the top"] : ["row", "the left"];
    return {
      rule: `In ${said}, each digit says where in its ${across} the ${number} stands. It names the ${axis}, counted from ${from}.`,
      title: "Index lines",
      noun: `index ${axis}`,
      plural: `index ${axis}s`,
      at: cells,
      holds: `say where the ${number} of each ${across} stands`,
    };
  },
  alsoSaid: ["index"],
  because,
  relabels: "none",
  countsPlaces: true,
};
