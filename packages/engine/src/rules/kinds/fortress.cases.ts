import { areaIn, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["fortress: r1c1"]),
    tiny(["fortress: r2c2 r2c3"]),
    tiny(["fortress: [r1c1 r1c2 r2c1, r4c3 r4c4]"]),
    tiny(["fortress: r2c2 r2c3 r3c2 r3c3"]),
    tiny(["fortress: [r1c1, r1c2]"]),
    tiny(["fortress: r1c1-r1c4"]),
    tiny(["fortress: r2c2 r3c2"], { digits: "0-3" }),
    tiny(["fortress: r1c3 r1c4"], { digits: "1 2 5 9", regions: "none" }),
    tiny(["fortress: r1c1 r1c2 r2c1 r2c2"], { size: 2 }),
    tiny(
      ["fortress: r2c3 r2c4"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const least = 2 + random.below(board.size - 1);
    return pathOf(areaIn(random, board, board.size ** 2, ({ digit }) => digit >= least));
  },
  example: {
    puzzle: tiny(["fortress: r2c1 r2c2"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "4231\n3142\n2413\n1324",
  },
};
