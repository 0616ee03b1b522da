import type { Board } from "../src/board/board.ts";
import { digitsOf } from "../src/board/digits.ts";
import type { Deduction, Spot } from "../src/deduce/deduction.ts";
import type { SpotFact, Step } from "../src/deduce/step.ts";
import type { Plan } from "../src/order/plan.ts";
import type { OrderedBeat } from "../src/order/running-order.ts";
import { type Cell, cellNamed } from "../src/puzzle/canvas.ts";

/** A published plan as the planner holds it: so that both may be asked about the same show, damaged or not. */
export const beatsFrom = (plan: Plan, board: Board): OrderedBeat[] => {
  const cell = (name: string): Cell => cellNamed(board.canvas, name)!;
  const byCell = <T, U>(of: Readonly<Record<string, T>>, to: (value: T) => U): Map<Cell, U> =>
    new Map(Object.entries(of).map(([name, value]) => [cell(name), to(value)]));
  const spot = ({ digit, cells, house }: SpotFact): Spot => ({ digit, house, cells: cells.map(cell) });
  const deduction = ({ technique, level, places, removes, spots, because }: Step): Deduction => ({
    technique,
    level,
    places: byCell(places, (digit) => digit),
    removes: byCell(removes, digitsOf),
    spots: spots.map(spot),
    relates: [],
    because: {
      facts: byCell(because.facts, digitsOf),
      spots: because.spots.map(spot),
      relations: [],
      houses: because.houses,
      rules: because.rules,
    },
  });
  return plan.acts
    .flatMap(({ beats }) => beats)
    .map(({ steps, writes }) => ({
      steps: steps.map((n) => {
        const step = plan.steps[Number(n) - 1]!;
        return { deduction: deduction(step), recalls: step.because.recalls.map((earlier) => Number(earlier) - 1) };
      }),
      writes: { cells: byCell(writes.cells, digitsOf), spots: writes.spots.map(spot) },
    }));
};
