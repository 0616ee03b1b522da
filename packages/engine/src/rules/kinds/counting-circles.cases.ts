import { cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["counting-circles: r1c1"]),
    tiny(["counting-circles: r1c1 r2c3"]),
    tiny(["counting-circles: r1c1 r2c2 r2c3 r3c4"]),
    tiny(["counting-circles: [r1c1 r2c3 r3c2, r4c4]"]),
    tiny(["counting-circles: r1c1 r1c2"]),
    tiny(["counting-circles: r1c1-r1c4 r2c1-r2c4 r3c1 r3c2"]),
    tiny(["counting-circles: r1c1 r2c3 r3c2"], { digits: "0-3" }),
    tiny(["counting-circles: r1c1 r2c2 r3c3"], { digits: "1 2 5 9", regions: "none" }),
    tiny(["counting-circles: r1c1 r2c2"], { size: 2 }),
    tiny(
      ["counting-circles: r2c3 r2c4 r3c3"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const counted = random.shuffled(Array.from({ length: board.size }, (_, k) => k + 1)).slice(0, 1 + random.below(3));
    const cells = random.shuffled(cellsOf(board));
    return pathOf(random.shuffled(counted.flatMap((one) => cells.filter(({ digit }) => digit === one).slice(0, one))));
  },
  example: {
    puzzle: tiny(["counting-circles: r1c1 r1c3 r2c1 r3c4"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2134\n3421\n1243\n4312",
  },
};
