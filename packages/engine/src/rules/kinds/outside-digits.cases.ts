import { lineFrom } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["outside-digits: { row: 1, from: left, digits: 3 }"]),
    tiny([
      "outside-digits: [{ row: 2, from: right, digits: 1 2 }, { column: 3, from: bottom, digits: 2, within: 1 }, { column: 1, from: top, digits: [2, 3, 1], within: 3 }]",
    ]),
    tiny(["outside-digits: [{ row: 1, from: left, digits: 1 2 }, { row: 1, from: right, digits: 2 }]"]),
    tiny(["outside-digits: { row: 1, from: left, digits: 2 2 }"]),
    tiny(["outside-digits: [{ row: 2, from: left, digits: 0 }, { column: 4, from: top, digits: 3 0 }]"], {
      digits: "0-3",
    }),
    tiny(["outside-digits: [{ row: 1, from: right, digits: 9 1 5 }, { column: 4, from: bottom, digits: 1 2 }]"], {
      digits: "1 2 5 9",
      regions: "none",
    }),
    tiny(["outside-digits: { row: 2, from: left, digits: 1 }"], { size: 2 }),
    tiny(
      [
        "outside-digits: [{ grid: a, row: 2, from: left, digits: 3, within: 2 }, { grid: b, row: 1, from: right, digits: 4, within: 1 }]",
      ],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line, from, digits } = lineFrom(random, board);
    const depth = "row" in line && board.size === 6 ? 3 : 2;
    const within = random.pick([undefined, 1, 2, 3, 4]);
    const near = random.shuffled(digits.slice(0, within ?? depth)).slice(0, 1 + random.below(2));
    return within === undefined ? { ...line, ...from, digits: near } : { ...line, ...from, digits: near, within };
  },
  example: {
    puzzle: tiny([
      "outside-digits: [{ row: 1, from: left, digits: 1 3 }, { row: 3, from: right, digits: 4 }, { column: 2, from: bottom, digits: 2, within: 1 }]",
    ]),
    obeys: "1342\n2431\n3124\n4213",
    breaks: "2341\n4123\n3214\n1432",
  },
};
