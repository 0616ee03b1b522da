import { digitsOf } from "../../board/digits.ts";
import { rulerAlong } from "../../marks/ruler.ts";
import { type Cell, cellAt } from "../../puzzle/canvas.ts";
import { pairTerm } from "../../terms/make.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { cellsIn } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { digitsText } from "../in-words.ts";
import { lineSaid } from "../outside-clue.ts";
import { lineOf, type OutsideLine } from "../outside-line.ts";

/** A cell of the line, a cell that its digit may name, and that cell's place, from 1. */
interface Named {
  readonly cells: readonly [Cell, Cell];
  readonly place: number;
}
interface IndexLine extends Bound {
  readonly line: OutsideLine;
  readonly said: string;
  readonly named: readonly Named[];
}

/** The first names the place of the second just where the second is the line's number. */
const points =
  (place: number, number: number) =>
  (first: number, second: number): boolean =>
    (first === place) === (second === number);

export const indexLine: Kind<OutsideBody, IndexLine> = {
  name: "index-line",
  body: outside({ numbers: {}, from: false }),
  resolve: (body, setting) => {
    const line = lineOf(body, setting);
    if ("faults" in line) return line;
    const { grid, axis, number, places } = line;
    if (grid.digits.some((digit, k) => digit !== k + 1))
      return faulty({
        at: [axis],
        read: `the digits ${digitsText(digitsOf(grid.digits))}`,
        right: `a line of a grid with the digits 1 to ${grid.size}`,
      });
    const others = grid.digits.filter((place) => place !== number);
    const named = places.flatMap((at, k) =>
      others.map((place): Named => {
        const shift = place - number;
        const other = axis === "row" ? { ...at, row: at.row + shift } : { ...at, column: at.column + shift };
        return { cells: [line.cells[k]!, cellAt(setting.canvas, other)!], place };
      }),
    );
    return { cells: cellsIn(setting, [grid]), line, said: lineSaid(line, setting), named };
  },
  scopes: ({ named, line }) => named.map(({ cells, place }) => holding(cells, points(place, line.number))),
  terms: ({ id, named, line }) => named.map(({ cells, place }) => pairTerm(id, cells, points(place, line.number))),
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
};
