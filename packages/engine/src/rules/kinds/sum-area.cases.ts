import { areaIn, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["sum-area: { cells: r1c1 r1c2, sum: 3 }"]),
    tiny(["sum-area: [{ cells: r2c2 r2c3 r3c2, sum: 5 }, { cells: r4c4, sum: 2 }]"]),
    tiny(["sum-area: { cells: r1c1 r2c3 r3c2 r4c4, sum: 4 }"]),
    tiny(["sum-area: { cells: r1c1 r1c2, sum: 2 }"]),
    tiny(["sum-area: { cells: r2c2 r3c3, sum: 0 }"], { digits: "0-3" }),
    tiny(["sum-area: { cells: r1c1 r2c2 r3c3, sum: 15 }"], { digits: "1 2 5 9", regions: "none" }),
    tiny(["sum-area: { cells: r1c1 r2c2, sum: 4 }"], { size: 2 }),
    tiny(
      ["sum-area: { cells: r2c3 r2c4 r4c3, sum: 9 }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const area = areaIn(random, board, 1 + random.below(5));
    return { cells: pathOf(area), sum: area.reduce((sum, { digit }) => sum + digit, 0) };
  },
  example: {
    puzzle: tiny(["sum-area: { cells: r2c2 r2c3 r3c2, sum: 6 }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "4231\n3142\n2413\n1324",
  },
};
