import { digitsOf } from "../../board/digits.ts";
import { rulerAlong } from "../../marks/ruler.ts";
import type { Cell, Place } from "../../puzzle/canvas.ts";
import { pairTerms } from "../../terms/make.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { cellsAt, cellsIn } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";
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

/** The first names the place of the second just where the second is the line's number. */
const points =
  (place: number, number: number) =>
  (first: number, second: number): boolean =>
    (first === place) === (second === number);

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
      called: `index ${said}`,
      at: cells,
      holds: `say where the ${number} of each ${across} stands`,
    };
  },
  relabels: "none",
  countsPlaces: true,
};
