import { lineFrom } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["skyscraper: { row: 1, from: left, sees: 2 }"]),
    tiny([
      "skyscraper: [{ row: 2, from: right, sees: 2 }, { column: 3, from: bottom, sees: 2 }, { column: 1, from: top, sees: 3 }]",
    ]),
    tiny(["skyscraper: [{ row: 1, from: left, sees: 4 }, { row: 1, from: right, sees: 2 }]"]),
    tiny(["skyscraper: { column: 2, from: bottom, sees: 3 }"], { digits: "0-3" }),
    tiny(["skyscraper: [{ row: 1, from: right, sees: 2 }, { column: 4, from: bottom, sees: 3 }]"], {
      digits: "1 2 5 9",
      regions: "none",
    }),
    tiny(["skyscraper: { row: 2, from: left, sees: 2 }"], { size: 2 }),
    tiny(["skyscraper: { row: 1, from: left, sees: 1 }"], { size: 1 }),
    tiny(
      ["skyscraper: [{ grid: a, row: 2, from: left, sees: 2 }, { grid: b, row: 1, from: right, sees: 2 }]"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line, from, digits } = lineFrom(random, board);
    const sees = digits.filter((digit, k) => digits.slice(0, k).every((before) => before < digit)).length;
    return { ...line, ...from, sees };
  },
  example: {
    puzzle: tiny([
      "skyscraper: [{ row: 1, from: left, sees: 3 }, { row: 3, from: right, sees: 1 }, { column: 2, from: bottom, sees: 2 }]",
    ]),
    obeys: "1342\n2413\n3124\n4231",
    breaks: "2341\n4132\n1423\n3214",
  },
};
