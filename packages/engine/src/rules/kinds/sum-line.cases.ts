import { pathOf } from "../../../test-kit/chance-cells.ts";
import { digitsOf, pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

/** Whether digits from 1 on split into runs of that sum. */
const splits = (digits: readonly number[], sum: number): boolean => {
  let run = 0;
  for (const digit of digits) run = run + digit === sum ? 0 : run + digit;
  return run === 0;
};

export const cases: KindCases = {
  boards: [
    tiny(["sum-line: { cells: r1c1, sum: 3 }"]),
    tiny(["sum-line: { cells: r1c1 r1c2, sum: 5 }"]),
    tiny(["sum-line: { cells: r1c1-r1c4, sum: 5 }"]),
    tiny(["sum-line: [{ cells: r1c1 r2c2 r3c3 r3c4, sum: 4 }, { cells: r4c1 r4c2 r3c2, sum: 6 }]"]),
    tiny(["sum-line: [{ cells: r1c1 r1c2, sum: 2 }]"]),
    tiny(["sum-line: { cells: r1c1 r2c2 r2c1 r1c2, sum: 10 }"]),
    tiny(["sum-line: { cells: r1c1-r1c4 r2c3, sum: 3 }"], { digits: "0-3" }),
    tiny(["sum-line: { cells: r2c1 r1c2 r2c3, sum: 0 }"], { digits: "0-3", regions: "none" }),
    tiny(["sum-line: { cells: r1c1 r2c1 r3c2 r4c2, sum: 8 }"], { digits: "0 3 5 8", regions: "none" }),
    tiny(
      ["sum-line: { cells: r1c2-r1c4, sum: 3 }"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r1c3", digits: "2 3" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 1, most: 6 })!;
    const total = digitsOf(path).reduce((sum, digit) => sum + digit);
    const sums = Array.from({ length: total }, (_, k) => k + 1).filter((sum) => splits(digitsOf(path), sum));
    return { cells: pathOf(path), sum: random.pick(sums) };
  },
  example: {
    puzzle: tiny(["sum-line: { cells: r5c2 r4c2 r3c3 r2c4 r2c5, sum: 7 }"], { size: 6, regions: "boxes" }),
    obeys: "542631\n136524\n354162\n621453\n215346\n463215",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
