import { attempt, cellsOf, type FilledCell, pathOf } from "../../../test-kit/chance-cells.ts";
import { areTouching, digitsOf, pathWhere } from "../../../test-kit/chance-lines.ts";
import type { Filled, KindCases, Random } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

/** One cell, or two from left to right or top to bottom, that read as the sum and touch the shaft. */
const totalFor = (random: Random, board: Filled, shaft: readonly FilledCell[]): FilledCell[] | undefined => {
  const sum = digitsOf(shaft).reduce((a, b) => a + b);
  const free = cellsOf(board).filter(({ name }) => !shaft.some((cell) => cell.name === name));
  const totals = free.flatMap((cell) => [
    [cell],
    ...free
      .filter((next) => next.row - cell.row + next.column - cell.column === 1 && areTouching(cell, next))
      .filter((next) => next.row === cell.row || next.column === cell.column)
      .map((next) => [cell, next]),
  ]);
  return random
    .shuffled(totals)
    .find((total) => Number(digitsOf(total).join("")) === sum && total.some((cell) => areTouching(cell, shaft[0]!)));
};

export const cases: KindCases = {
  boards: [
    tiny(["arrow: { total: r1c2, along: r2c3 }"]),
    tiny(["arrow: { total: r1c1, along: r2c2 r2c3 }"]),
    tiny(["arrow: [{ total: r2c2, along: r3c3 r3c4 }, { total: r2c2, along: r2c3 }]"]),
    tiny(["arrow: { total: r4c4, along: r4c3 r4c2 }"]),
    tiny(["arrow: { total: r1c1, along: r1c2 }"]),
    tiny(["arrow: { total: r1c1 r1c2, along: r2c2 r3c3 r4c3 r4c4 r3c4 }"]),
    tiny(["arrow: { total: r2c1 r3c1, along: r3c2 r2c3 r1c4 r2c4 }"], { digits: "0-3" }),
    tiny(["arrow: { total: r1c1-r1c3, along: r2c3 r2c2 r3c2 r4c2 r4c3 r3c4 r4c4 }"], {
      digits: "0-3",
      regions: "none",
    }),
    tiny(["arrow: { total: r2c2, along: r2c1 r1c1 r1c2 }"], { digits: "0 1 3 6", regions: "none" }),
    tiny(["arrow: { total: r1c2 r1c1, along: r2c2 r3c3 r3c2 r2c3 }"]),
    tiny(["arrow: { total: r1c1 r2c2, along: r2c3 r3c4 r2c4 r1c3 }"]),
    tiny(
      ["arrow: { total: r1c4, along: r1c3 r1c2 }"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r1c3", digits: "4 5" },
      ],
    ),
  ],
  random: (random, board) =>
    attempt(60, () => {
      const shaft = pathWhere(random, board, { least: 1, most: 4 })!;
      const total = totalFor(random, board, shaft);
      return total && { total: pathOf(total), along: pathOf(shaft) };
    }),
  example: {
    puzzle: tiny(["arrow: { total: r5c2, along: r4c2 r3c3 r2c4 }"], { size: 6, regions: "boxes" }),
    obeys: "126345\n435162\n651423\n243516\n364251\n512634",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
