import { edgeWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["xv-v: r1c1 r1c2"]),
    tiny(["xv-v: [r1c2 r2c2, r3c4 r3c3, r2c1 r3c1]"]),
    tiny(["xv-v: [r1c1 r1c2, r1c2 r1c3]"]),
    tiny(["xv-v: r2c2 r3c2"], { digits: "0 1 4 5", regions: "none" }),
    tiny(["xv-v: { cells: r2c2 r2c3, note: a pair }"], { digits: "1-4", regions: "none" }),
    tiny(["xv-v: r1c1 r2c1"], { size: 2, digits: "2 3" }),
    tiny(
      ["xv-v: r1c2 r1c3"],
      [
        { id: "a", size: 2, digits: "2 3" },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
  ],
  random: (random, board) => edgeWhere(random, board, (x, y) => x + y === 5)?.cells,
  example: {
    puzzle: tiny(["xv-v: [r1c1 r2c1, r2c2 r2c3]"]),
    obeys: "2413\n3142\n1324\n4231",
    breaks: "2341\n4123\n1234\n3412",
  },
};
