import { besides, cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["local-maximum: r1c1"]),
    tiny(["local-maximum: [r2c2, r4c4]"]),
    tiny(["local-maximum: r1c2 r2c3 r4c1"]),
    tiny(["local-maximum: r1c1 r2c2 r3c3 r4c4"]),
    tiny(["local-maximum: [r1c1, r1c2]"]),
    tiny(["local-maximum: r2c2"], { digits: "0-3" }),
    tiny(["local-maximum: r2c2 r1c4"], { digits: "1 2 5 9", regions: "none" }),
    tiny(["local-maximum: r1c1"], { size: 2 }),
    tiny(
      ["local-maximum: r2c3"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const fitting = cellsOf(board).filter((cell) => besides(cell, board).every(({ digit }) => cell.digit > digit));
    return fitting.length === 0 ? undefined : pathOf(random.shuffled(fitting).slice(0, 1 + random.below(3)));
  },
  example: {
    puzzle: tiny(["local-maximum: r1c4 r2c2"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2143\n4321\n1234\n3412",
  },
};
