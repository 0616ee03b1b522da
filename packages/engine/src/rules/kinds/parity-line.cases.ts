import { pathOf } from "../../../test-kit/chance-cells.ts";
import { lastTwo, pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["parity-line: r1c1 r1c2"]),
    tiny(["parity-line: r1c1-r1c4"]),
    tiny(["parity-line: r1c1 r2c2 r3c3 r4c4 r4c3"]),
    tiny(["parity-line: [r1c1 r1c2 r2c3, r4c1 r3c2 r3c3]"]),
    tiny(["parity-line: [r1c1-r1c3, r1c1 r2c2 r2c3 r1c3]"]),
    tiny(["parity-line: r2c1 r1c2 r2c3 r3c3"], { digits: "0-3" }),
    tiny(["parity-line: r1c1 r2c1 r3c2 r4c2"], { digits: "2 4 7 8", regions: "none" }),
    tiny(
      ["parity-line: r3c2 r3c3 r4c4"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 2, most: 6, fits: lastTwo((x, y) => (x + y) % 2 === 1) });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["parity-line: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "635412\n421653\n143265\n562341\n354126\n216534",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
