import type { Filled, KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

/** Whether cells in the same place of their boxes, 2 rows by 2 or 3 columns, differ. */
const obeys = (board: Filled): boolean => {
  const seen = new Set<string>();
  for (let row = 1; row <= board.size; row++)
    for (let column = 1; column <= board.size; column++)
      seen.add(`${row % 2} ${column % (board.size / 2)} ${board.digit(row, column)}`);
  return seen.size === board.size ** 2;
};

export const cases: KindCases = {
  boards: [
    tiny(["disjoint-groups"]),
    tiny(["disjoint-groups: { grids: [tiny] }"], { digits: "0-3" }),
    tiny(["disjoint-groups"], { regions: "boxes 1x4", digits: "1 2 5 9" }),
    tiny(["disjoint-groups"], {}, "{ r1c1: 1, r3c3: 1 }"),
    tiny(["disjoint-groups"], { size: 2, regions: "boxes 1x2" }),
    tiny(
      ["disjoint-groups"],
      [
        { id: "a", size: 4 },
        { id: "b", size: 2, at: "r4c4" },
      ],
    ),
    tiny(
      ["disjoint-groups: { grids: [b] }"],
      [
        { id: "a", size: 2, regions: "boxes 1x2" },
        { id: "b", size: 4, at: "r2c2" },
      ],
    ),
  ],
  random: (_, board) => (obeys(board) ? null : undefined),
  example: {
    puzzle: tiny(["disjoint-groups"]),
    obeys: "2341\n4123\n3214\n1432",
    breaks: "2341\n1432\n4213\n3124",
  },
};
