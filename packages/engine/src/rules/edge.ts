import { listOf } from "../board/digits.ts";
import { between, centres } from "../marks/points.ts";
import type { Point } from "../marks/shape.ts";
import type { Cell, Place } from "../puzzle/canvas.ts";
import { writePath } from "./bodies/path-text.ts";
import { cellsAt } from "./cells.ts";
import { type Bound, type Fault, type Faulty, faulty, type Setting } from "./contract.ts";

/** Two cells with a mark on the edge between them. */
export interface Edge extends Bound {
  /** The middles of the two cells, and of the edge between them. */
  readonly ends: readonly [Point, Point];
  readonly at: Point;
}

type Holds = (first: number, second: number) => boolean;

/** Two cells that hold together, as a scope. */
export const holding = (cells: readonly Cell[], holds: Holds) => ({
  cells,
  holds: ([first, second]: readonly number[]): boolean => holds(first!, second!),
});

/** The edge between these two places, or a fault where no digits of theirs hold. */
export const edgeOf = (
  places: readonly Place[],
  setting: Setting,
  holds: Holds,
  fault: Partial<Fault> & Pick<Fault, "right">,
): Edge | Faulty => {
  const cells = cellsAt(setting, places);
  const [first, second] = cells.map((cell) => listOf(setting.domains[cell]!));
  if (!first!.some((one) => second!.some((other) => holds(one, other))))
    return faulty({ read: writePath(places), ...fault });
  const ends = centres(places) as [Point, Point];
  return { cells, ends, at: between(...ends) };
};
