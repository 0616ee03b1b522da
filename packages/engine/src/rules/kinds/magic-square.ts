import { count, type Digits, has, listOf } from "../../board/digits.ts";
import { crossedBlock } from "../../marks/fills.ts";
import { type Cell, nameOf, type Place } from "../../puzzle/canvas.ts";
import type { Term } from "../../terms/term.ts";
import { blockAt } from "../block.ts";
import { type CornerBlockBody, cornerBlock } from "../bodies/corner.ts";
import { cellsAt, digitsIn } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";
import { domainsText } from "../in-words.ts";
import { onceIn } from "../once.ts";
import { withFirst } from "../several-areas.ts";
import { asMuchAs } from "../sums.ts";

interface MagicSquare extends Bound {
  readonly places: readonly Place[];
  /** Its rows, columns and diagonals. */
  readonly lines: readonly (readonly Cell[])[];
  /** Every filling, cell by cell. */
  readonly rows: readonly (readonly number[])[];
  /** What every line adds up to, where the cells hold just nine digits. */
  readonly sum: number | undefined;
}

const lines = [
  [0, 1, 2],
  [3, 4, 5],
  [6, 7, 8],
  [0, 3, 6],
  [1, 4, 7],
  [2, 5, 8],
  [0, 4, 8],
  [2, 4, 6],
];

/** The square of three with equal lines that has these digits in its middle and its two lower corners. */
const squareOf = (middle: number, left: number, right: number): number[] => [
  2 * middle - right,
  left + right - middle,
  2 * middle - left,
  middle - left + right,
  middle,
  middle + left - right,
  left,
  3 * middle - left - right,
  right,
];

/** All squares of nine different digits that the cells can hold. */
const squaresIn = (domains: readonly Digits[]): number[][] =>
  listOf(domains[4]!)
    .flatMap((middle) =>
      listOf(domains[6]!).flatMap((left) => listOf(domains[8]!).map((right) => squareOf(middle, left, right))),
    )
    .filter(
      (square) =>
        new Set(square).size === 9 && square.every((digit, k) => digit >= 0 && digit < 32 && has(domains[k]!, digit)),
    );

export const magicSquare: Kind<CornerBlockBody, MagicSquare> = {
  name: "magic-square",
  body: cornerBlock,
  resolve: ({ at, size }, setting) => {
    if (size !== 3) return faulty({ at: ["size"], read: String(size), right: "3" });
    const places = blockAt(at, size, setting);
    if ("faults" in places) return places;
    const cells = cellsAt(setting, places);
    const known = cells.map((cell) => setting.domains[cell]!);
    const rows = onceIn(setting, `magic-square ${known}`, () => squaresIn(known));
    if (rows.length === 0)
      return faulty({
        at: ["at"],
        read: nameOf(at),
        right: `nine cells that can make a magic square; the digits ${domainsText(known)} can't`,
      });
    const sum = count(digitsIn(setting, cells)) === 9 ? 3 * rows[0]![4]! : undefined;
    return { cells, places, lines: lines.map((line) => line.map((k) => cells[k]!)), rows, sum };
  },
  scopes: ({ cells, lines }) => [
    { cells, different: true },
    ...withFirst(lines).map(([first, line]) => asMuchAs(first, line)),
  ],
  terms: ({ id, cells, lines, rows, sum }): Term[] => [
    { term: "different", owner: id, cells },
    ...(sum === undefined ? [] : lines.map((line): Term => ({ term: "sum", owner: id, cells: line, equals: sum }))),
    { term: "table", owner: id, cells, rows },
  ],
  marks: ({ places }) => crossedBlock(places),
  words: ({ cells, sum }) => ({
    rule: `Digits in a magic square don't repeat. Its rows, columns and both diagonals ${sum === undefined ? "have one sum" : `each add up to ${sum}`}.`,
    title: "Magic squares",
    noun: "magic square",
    plural: "magic squares",
    at: cells,
    holds: sum === undefined ? "add up to the same along every line" : `add up to ${sum} along every line`,
  }),
  relabels: "mirror",
};
