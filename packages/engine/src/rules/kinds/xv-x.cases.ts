import { edgeWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["xv-x: r1c1 r1c2"], { digits: "3-6" }),
    tiny(["xv-x: [r1c2 r2c2, r3c4 r3c3, r2c1 r3c1]"], { digits: "2 4 6 8" }),
    tiny(["xv-x: [r1c1 r1c2, r1c2 r1c3]"], { digits: "3-6" }),
    tiny(["xv-x: r2c2 r3c2"], { digits: "0 1 9 10", regions: "none" }),
    tiny(["xv-x: { cells: r2c2 r2c3, note: a pair }"], { digits: "1 5 8 9" }),
    tiny(["xv-x: r1c1 r2c1"], { size: 2, digits: "4 6" }),
    tiny(
      ["xv-x: r1c2 r1c3"],
      [
        { id: "a", size: 2, digits: "4 5" },
        { id: "b", size: 2, at: "r1c3", digits: "5 6" },
      ],
    ),
  ],
  random: (random, board) => edgeWhere(random, board, (x, y) => x + y === 10)?.cells,
  example: {
    puzzle: tiny(["xv-x: [r1c1 r1c2, r2c3 r3c3]"], { digits: "2 4 6 8" }),
    obeys: "4682\n2864\n6248\n8426",
    breaks: "4826\n2648\n6284\n8462",
  },
};
