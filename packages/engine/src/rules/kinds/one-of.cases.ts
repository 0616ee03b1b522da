import { cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["one-of: { cells: r1c1, digits: 2 4 }"]),
    tiny(["one-of: [{ cells: r1c1 r1c2 r1c3, digits: [1, 2, 3] }, { cells: r4c4, digits: 3 }]"]),
    tiny(["one-of: { cells: r1c1 r1c2 r1c3, digits: 1 2 }"]),
    tiny(["one-of: { cells: r2c2 r3c3, digits: 0 3 }"], { digits: "0-3" }),
    tiny(["one-of: { cells: r1c1 r2c2, digits: 1 9 }"], { digits: "1 2 5 9", regions: "none" }),
    tiny(
      ["one-of: { cells: r2c3 r3c4, digits: 3 4 }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const cells = random.shuffled(cellsOf(board)).slice(0, 1 + random.below(3));
    const digits = [...cells.map(({ digit }) => digit), 1 + random.below(board.size)];
    return { cells: pathOf(cells), digits: [...new Set(digits)] };
  },
  example: {
    puzzle: tiny(["one-of: { cells: r1c2 r3c1, digits: 2 4 }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2134\n3421\n1243\n4312",
  },
};
