import { crowded, diagonalArrow } from "../../marks/outside.ts";
import { centres } from "../../marks/points.ts";
import type { Point } from "../../marks/shape.ts";
import { cellAt } from "../../puzzle/canvas.ts";
import { becauseOfTotal } from "../because/total.ts";
import { type DiagonalBody, diagonal } from "../bodies/diagonal.ts";
import { cellsAt } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";
import { unreachable } from "../in-words.ts";
import { sumsOf } from "../reachable.ts";
import { mayNotRepeat } from "../readings.ts";
import { addingTo } from "../sums.ts";

interface LittleKiller extends Bound {
  readonly sum: number;
  /** The middle of its first cell, and the step to the next. */
  readonly first: Point;
  readonly step: Point;
  readonly scale: number;
}

export const littleKiller: Kind<DiagonalBody, LittleKiller> = {
  name: "little-killer",
  body: diagonal,
  resolve: ({ cells: places, sum }, setting) => {
    const cells = cellsAt(setting, places);
    const domains = cells.map((cell) => setting.domains[cell]!);
    const sums = sumsOf(domains);
    if (!sums.includes(sum))
      return faulty({ at: ["sum"], read: String(sum), right: unreachable(domains, { values: sums, wanted: sum }) });
    const [first, second] = centres(places);
    const step: Point = [second![0] - first![0], second![1] - first![1]];
    const before = { row: places[0]!.row - step[1], column: places[0]!.column - step[0] };
    return { cells, sum, first: first!, step, scale: cellAt(setting.canvas, before) === undefined ? 1 : crowded };
  },
  scopes: ({ cells, sum }) => [addingTo(cells, sum)],
  terms: ({ id, cells, sum }) => [{ term: "sum", owner: id, cells, equals: sum }],
  marks: ({ first, step, sum, scale }) => diagonalArrow(first, step, String(sum), scale),
  words: ({ cells, sum }) => ({
    rule: "A number with an arrow is the sum of the digits along its diagonal. They may repeat where rows, columns and regions allow.",
    title: "Little killers",
    noun: "little killer",
    plural: "little killers",
    called: `little killer of ${sum}`,
    at: cells,
    holds: `add up to ${sum}`,
  }),
  because: ({ cells, sum }, asked) => becauseOfTotal(cells, sum, asked),
  alsoSaid: ["diagonal"],
  readings: [mayNotRepeat("digits along a little killer's diagonal don't repeat", ({ cells }) => cells)],
  relabels: "none",
};
