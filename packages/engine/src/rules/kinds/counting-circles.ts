import { listOf } from "../../board/digits.ts";
import { doubleRing } from "../../marks/cell-marks.ts";
import { centres } from "../../marks/points.ts";
import type { Point } from "../../marks/shape.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import type { State } from "../../terms/term.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { writePath } from "../bodies/path-text.ts";
import { cellsAt, digitsIn } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";
import { domainsText } from "../in-words.ts";
import { canCountThemselves } from "../reachable.ts";
import { letterFromSecond } from "../several-areas.ts";
import { becauseOfCounting } from "./counting-circles.because.ts";

interface CountingCircles extends Bound {
  readonly digits: readonly number[];
  readonly at: readonly Point[];
}

/** How many of the cells hold this digit: none, or as many as it says. */
const counting = (cells: readonly Cell[], digit: number) => ({
  cells,
  start: 0,
  next: (count: State, other: number) => (count as number) + (other === digit ? 1 : 0),
  ok: (count: State) => count === 0 || count === digit,
});

export const countingCircles: Kind<SetBody, CountingCircles> = {
  name: "counting-circles",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const cells = cellsAt(setting, places);
    const domains = cells.map((cell) => setting.domains[cell]!);
    if (canCountThemselves(domains, setting.spend))
      return { cells, digits: listOf(digitsIn(setting, cells)), at: centres(places) };
    const right = `${counted(cells.length)} ${cells.length === 1 ? "circle" : "circles"} that digits of ${domainsText(domains)} can fill, each as often as it says`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: ({ cells, digits }) => digits.map((digit) => counting(cells, digit)),
  terms: ({ id, cells, digits }) =>
    digits.map((digit) => ({ term: "automaton", owner: id, ...counting(cells, digit) })),
  marks: ({ id, at }) => at.flatMap((point) => doubleRing(point, letterFromSecond(id))),
  words: ({ id, cells }) => {
    const lettered = letterFromSecond(id) === "" ? "" : ` lettered ${letterFromSecond(id)}`;
    return {
      rule: `Double circles${lettered} come as a set. A digit in one says how many circles of its set hold that digit.`,
      title: "Counting circles",
      noun: "set of counting circles",
      plural: "sets of counting circles",
      called: `set of counting circles${lettered}`,
      at: cells,
      holds: "say how many of them hold the same digit",
    };
  },
  alsoSaid: ["counting circle", "number of ... circle", "how many ... circle"],
  because: becauseOfCounting,
  relabels: "none",
};
