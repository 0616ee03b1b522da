import { lineFrom } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["numbered-room: { row: 1, from: left, digit: 3 }"]),
    tiny([
      "numbered-room: [{ row: 2, from: right, digit: 1 }, { column: 3, from: bottom, digit: 4 }, { column: 1, from: top, digit: 2 }]",
    ]),
    tiny(["numbered-room: [{ row: 1, from: left, digit: 1 }, { column: 1, from: top, digit: 4 }]"]),
    tiny(["numbered-room: [{ row: 2, from: left, digit: 0 }, { column: 4, from: top, digit: 3 }]"], { digits: "0-3" }),
    tiny(["numbered-room: [{ row: 1, from: right, digit: 9 }, { column: 4, from: bottom, digit: 1 }]"], {
      digits: "1 2 5 9",
      regions: "none",
    }),
    tiny(["numbered-room: { row: 2, from: left, digit: 1 }"], { size: 2 }),
    tiny(
      ["numbered-room: [{ grid: a, row: 2, from: left, digit: 1 }, { grid: b, row: 1, from: right, digit: 4 }]"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line, from, digits } = lineFrom(random, board);
    return { ...line, ...from, digit: digits[digits[0]! - 1] };
  },
  example: {
    puzzle: tiny([
      "numbered-room: [{ row: 1, from: left, digit: 3 }, { row: 3, from: right, digit: 4 }, { column: 2, from: bottom, digit: 2 }]",
    ]),
    obeys: "4213\n1324\n3142\n2431",
    breaks: "2341\n4123\n1234\n3412",
  },
};
