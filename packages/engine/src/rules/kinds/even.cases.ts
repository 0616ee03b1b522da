import { cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["even: r1c1"]),
    tiny(["even: [r1c1 r2c3, r3c4, r4c2 r4c3]"]),
    tiny(["even: r1c1 r1c2"]),
    tiny(["even: r1c1 r1c2 r1c3"]),
    tiny(["even: r2c2"], { digits: "0-3" }),
    tiny(["even: [r2c2, r1c4]"], { digits: "2 3 5 9", regions: "none" }),
    tiny(["even: r1c1"], { size: 2 }),
    tiny(
      ["even: r2c3"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const fitting = random.shuffled(cellsOf(board).filter(({ digit }) => digit % 2 === 0));
    return pathOf(fitting.slice(0, 1 + random.below(4)));
  },
  example: {
    puzzle: tiny(["even: r1c2 r2c2"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2134\n3421\n1243\n4312",
  },
};
