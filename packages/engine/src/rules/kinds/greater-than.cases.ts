import { edgeWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["greater-than: r1c1 r1c2"]),
    tiny(["greater-than: [r2c2 r1c2, r3c3 r3c4, r3c2 r2c2]"]),
    tiny(["greater-than: [r1c1 r1c2, r1c2 r1c3, r1c3 r1c4]"]),
    tiny(["greater-than: [r1c1 r1c2, r1c2 r2c2, r2c2 r2c1, r2c1 r1c1]"]),
    tiny(["greater-than: { cells: r2c2 r3c2 }"], { digits: "0-3" }),
    tiny(["greater-than: r1c1 r2c1"], { size: 2, digits: "2 9" }),
    tiny(
      ["greater-than: r1c2 r1c3"],
      [
        { id: "a", size: 2, digits: "3 4" },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
  ],
  random: (random, board) => edgeWhere(random, board, (x, y) => x > y)?.cells,
  example: {
    puzzle: tiny(["greater-than: [r1c2 r1c1, r2c2 r2c3, r3c3 r4c3]"]),
    obeys: "1324\n2431\n3142\n4213",
    breaks: "2431\n1342\n4123\n3214",
  },
};
