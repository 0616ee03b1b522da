import { lineFrom, sumOf } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["x-sum: { row: 1, from: left, sum: 6 }"]),
    tiny([
      "x-sum: [{ row: 2, from: right, sum: 3 }, { column: 3, from: bottom, sum: 6 }, { column: 1, from: top, sum: 1 }]",
    ]),
    tiny(["x-sum: [{ row: 1, from: left, sum: 1 }, { column: 1, from: top, sum: 10 }]"]),
    tiny(["x-sum: [{ row: 2, from: left, sum: 0 }, { column: 4, from: top, sum: 5 }]"], { digits: "0-3" }),
    tiny(["x-sum: [{ row: 1, from: right, sum: 7 }, { column: 4, from: bottom, sum: 1 }]"], {
      digits: "1 2 5 9",
      regions: "none",
    }),
    tiny(["x-sum: { row: 2, from: left, sum: 3 }"], { size: 2 }),
    tiny(
      ["x-sum: [{ grid: a, row: 2, from: left, sum: 1 }, { grid: b, row: 1, from: right, sum: 9 }]"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line, from, digits } = lineFrom(random, board);
    return { ...line, ...from, sum: sumOf(digits.slice(0, digits[0])) };
  },
  example: {
    puzzle: tiny([
      "x-sum: [{ row: 1, from: left, sum: 6 }, { row: 3, from: right, sum: 1 }, { column: 2, from: bottom, sum: 10 }]",
    ]),
    obeys: "3214\n4123\n2341\n1432",
    breaks: "2341\n4123\n1234\n3412",
  },
};
