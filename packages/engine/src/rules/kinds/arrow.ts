import { arrowHead, circleOrPill } from "../../marks/arrow.ts";
import { centres, towards } from "../../marks/points.ts";
import type { Point } from "../../marks/shape.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { type ArrowBody, arrowBody } from "../bodies/arrow.ts";
import { cellsAt } from "../cells.ts";
import type { Bound, Kind } from "../contract.ts";

interface Arrow extends Bound {
  readonly total: readonly Cell[];
  readonly along: readonly Cell[];
  readonly totalAt: readonly Point[];
  readonly alongAt: readonly Point[];
}

const weightOf = ({ total }: Arrow, index: number): number => (index < total.length ? 10 ** (total.length - 1 - index) : -1);

export const arrow: Kind<ArrowBody, Arrow> = {
  name: "arrow",
  body: arrowBody,
  resolve: (body, setting) => {
    const total = cellsAt(setting, body.total);
    const along = cellsAt(setting, body.along);
    return { cells: [...total, ...along], total, along, totalAt: centres(body.total), alongAt: centres(body.along) };
  },
  scopes: (arrow) => [
    {
      cells: arrow.cells,
      start: 0,
      next: (sum, digit, index) => (sum as number) + weightOf(arrow, index) * digit,
      ok: (sum) => sum === 0,
    },
  ],
  terms: (arrow) => [
    { term: "sum", owner: arrow.id, cells: arrow.cells, weights: arrow.cells.map((_, k) => weightOf(arrow, k)), equals: 0 },
  ],
  marks: ({ totalAt, alongAt }) => {
    const from = totalAt.reduce((best, point) => (Math.hypot(point[0] - alongAt[0]![0], point[1] - alongAt[0]![1]) < Math.hypot(best[0] - alongAt[0]![0], best[1] - alongAt[0]![1]) ? point : best));
    const shaft = [towards(from, alongAt[0]!, 0.38), ...alongAt];
    return [circleOrPill(totalAt), ...arrowHead(shaft)];
  },
  words: ({ total, along }) => ({
    rule:
      total.length === 1
        ? "Digits along an arrow add up to the digit in its circle; they may repeat where rows, columns and regions allow."
        : `Digits along an arrow add up to the ${total.length === 2 ? "two" : "three"}-digit number in its pill.`,
    title: "Arrows",
    noun: "arrow",
    plural: "arrows",
    at: [...total, ...along],
    holds: `add up to ${total.length === 1 ? "the circle" : "the pill"}`,
  }),
  relabels: "none",
};
