import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const areConsecutive = (digits: readonly number[]): boolean =>
  [...digits].sort((a, b) => a - b).every((digit, k, sorted) => k === 0 || digit === sorted[k - 1]! + 1);

export const cases: KindCases = {
  boards: [
    tiny(["renban: r1c1 r1c2"]),
    tiny(["renban: r1c2 r2c3 r3c3"]),
    tiny(["renban: r1c1-r4c4"]),
    tiny(["renban: [r1c1 r2c2 r2c3, r4c4 r3c3 r2c4]"]),
    tiny(["renban: [r1c1 r1c2, r1c2 r1c3, r1c3 r1c4, r2c1 r3c1]"]),
    tiny(["renban: r2c1 r2c2 r1c3 r1c2"]),
    tiny(["renban: r3c1 r2c2 r2c3"], { digits: "0-3" }),
    tiny(["renban: r1c1 r2c1 r3c2"], { digits: "1 2 3 5", regions: "none" }),
    tiny(
      ["renban: r3c2 r3c3 r4c4"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 2, most: 5, whole: areConsecutive });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["renban: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "241653\n536241\n423165\n165432\n652314\n314526",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
