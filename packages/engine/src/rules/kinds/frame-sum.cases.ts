import { lineFrom, sumOf } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["frame-sum: { row: 1, from: left, sum: 6 }"]),
    tiny([
      "frame-sum: [{ row: 2, from: right, sum: 7 }, { column: 3, from: bottom, sum: 5, over: 2 }, { column: 1, from: top, sum: 10, over: 4 }]",
    ]),
    tiny(["frame-sum: [{ row: 1, from: left, sum: 6 }, { row: 1, from: right, sum: 8 }]"]),
    tiny(["frame-sum: { column: 2, from: bottom, sum: 0, over: 1 }"], { digits: "0-3" }),
    tiny(["frame-sum: [{ row: 1, from: right, sum: 8 }, { column: 4, from: bottom, sum: 10, over: 2 }]"], {
      digits: "1 2 5 9",
      regions: "none",
    }),
    tiny(["frame-sum: { row: 2, from: left, sum: 3 }"], { size: 2 }),
    tiny(
      ["frame-sum: [{ grid: a, row: 2, from: left, sum: 3, over: 2 }, { grid: b, row: 1, from: right, sum: 9 }]"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line, from, digits } = lineFrom(random, board);
    const over = random.pick([undefined, 1, 2, 3, 4]);
    const sum = sumOf(digits.slice(0, over ?? 3));
    return over === undefined ? { ...line, ...from, sum } : { ...line, ...from, sum, over };
  },
  example: {
    puzzle: tiny([
      "frame-sum: [{ row: 1, from: left, sum: 6 }, { row: 3, from: right, sum: 5, over: 2 }, { column: 2, from: bottom, sum: 7 }]",
    ]),
    obeys: "2314\n1432\n3241\n4123",
    breaks: "2413\n1324\n3241\n4132",
  },
};
