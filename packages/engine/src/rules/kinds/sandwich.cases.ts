import { lineFrom, sumOf } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["sandwich: { row: 1, sum: 5 }"]),
    tiny(["sandwich: [{ row: 2, sum: 0 }, { column: 3, from: bottom, sum: 2 }, { column: 1, sum: 3 }]"]),
    tiny(["sandwich: [{ row: 2, sum: 5 }, { row: 2, from: right, sum: 2 }]"]),
    tiny(["sandwich: { grid: tiny, column: 2, from: top, sum: 2 }"], { digits: "0-3" }),
    tiny(["sandwich: [{ row: 1, sum: 7 }, { column: 4, sum: 2 }]"], { digits: "1 2 5 9", regions: "none" }),
    tiny(["sandwich: { row: 2, sum: 0 }"], { size: 2 }),
    tiny(
      ["sandwich: [{ grid: a, row: 2, sum: 2 }, { grid: b, row: 1, sum: 0 }, { grid: b, column: 1, sum: 0 }]"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line, from, digits } = lineFrom(random, board);
    const [start, end] = [digits.indexOf(1), digits.indexOf(board.size)].sort((a, b) => a - b);
    const sum = sumOf(digits.slice(start! + 1, end));
    return random.below(2) === 0 ? { ...line, sum } : { ...line, ...from, sum };
  },
  example: {
    puzzle: tiny(["sandwich: [{ row: 1, sum: 5 }, { row: 3, sum: 0 }, { column: 2, sum: 3 }]"]),
    obeys: "1234\n3412\n2341\n4123",
    breaks: "2341\n4123\n1432\n3214",
  },
};
