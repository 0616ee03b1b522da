import { type Digits, listOf } from "../../board/digits.ts";
import { arrowDrawing } from "../../marks/arrow.ts";
import { centres } from "../../marks/points.ts";
import type { Point } from "../../marks/shape.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import { becauseOfBalance, othersThat } from "../because/balance.ts";
import { type ArrowBody, arrowBody } from "../bodies/arrow.ts";
import { writePath } from "../bodies/path-text.ts";
import { cellsAt } from "../cells.ts";
import { type Bound, faulty, type Kind, type Setting } from "../contract.ts";
import { imbalance } from "../in-balance.ts";
import { onceIn } from "../once.ts";
import { sumsOf } from "../reachable.ts";
import { mayNotRepeat } from "../readings.ts";

interface Arrow extends Bound {
  readonly total: readonly Cell[];
  readonly along: readonly Cell[];
  readonly totalAt: readonly Point[];
  readonly alongAt: readonly Point[];
}

/** Each cell of a total weighs ten times the next; the shaft is taken from it. */
const weightOf = ({ total }: Arrow, index: number): number =>
  index < total.length ? 10 ** (total.length - 1 - index) : -1;

/** What cells can be when they are read as one number. */
const numbersOf = (domains: readonly Digits[]): number[] =>
  domains.reduce<number[]>(
    (numbers, domain) => [...new Set(numbers.flatMap((number) => listOf(domain).map((digit) => 10 * number + digit)))],
    [0],
  );

const unbalanced = ({ total, along }: Arrow, setting: Setting) => {
  const of = (cells: readonly Cell[]): Digits[] => cells.map((cell) => setting.domains[cell]!);
  const numbers = onceIn(setting, `arrow ${of(total)}`, () => numbersOf(of(total)));
  return imbalance({ called: "the sum along", values: sumsOf(of(along)) }, { called: "the total", values: numbers });
};

/** The way from the first cell of a pill to its last. */
const wayOf = (pill: readonly Point[]): string => {
  const [[ax, ay], [bx, by]] = [pill[0]!, pill.at(-1)!];
  if (ay === by) return ax < bx ? "from left to right" : "from right to left";
  return ay < by ? "from top to bottom" : "from bottom to top";
};

const ruleOf = ({ total, totalAt }: Arrow): string => {
  const sum =
    total.length === 1
      ? "the digit in its circle"
      : `the number in its pill. The ${counted(total.length)} digits there are read ${wayOf(totalAt)} as one number`;
  return `Digits along an arrow add up to ${sum}. They may repeat where rows, columns and regions let them.`;
};

export const arrow: Kind<ArrowBody, Arrow> = {
  name: "arrow",
  body: arrowBody,
  resolve: (body, setting) => {
    const total = cellsAt(setting, body.total);
    const along = cellsAt(setting, body.along);
    const cells = [...total, ...along];
    const arrow = { cells, total, along, totalAt: centres(body.total), alongAt: centres(body.along) };
    const fault = unbalanced(arrow, setting);
    return fault ? faulty({ at: ["along"], read: writePath(body.along), ...fault }) : arrow;
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
    {
      term: "sum",
      owner: arrow.id,
      cells: arrow.cells,
      weights: arrow.cells.map((_, k) => weightOf(arrow, k)),
      equals: 0,
    },
  ],
  marks: ({ totalAt, alongAt }) => arrowDrawing(totalAt, alongAt),
  words: (arrow) => ({
    rule: ruleOf(arrow),
    title: "Arrows",
    noun: "arrow",
    plural: "arrows",
    at: [...arrow.total, arrow.along.at(-1)!],
    holds: `add up to the ${arrow.total.length === 1 ? "circle" : "pill"}`,
  }),
  because: (arrow, asked) =>
    arrow.total.length > 1
      ? undefined
      : becauseOfBalance(
          [
            [
              { cells: arrow.total, makes: "its circle is", rest: othersThat("in the circle") },
              {
                cells: arrow.along,
                makes: arrow.along.length === 1 ? "the digit along it is" : "the digits along it make",
                rest: othersThat("along it"),
              },
            ],
          ],
          asked,
        ),
  readings: [mayNotRepeat("digits along an arrow don't repeat", ({ along }) => along)],
  relabels: "none",
};
