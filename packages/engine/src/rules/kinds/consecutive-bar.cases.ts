import { edgeWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["consecutive-bar: r1c1 r1c2"]),
    tiny(["consecutive-bar: [r1c2 r2c2, r3c4 r3c3, r3c3 r4c3]"]),
    tiny(["consecutive-bar: [r1c1 r1c2, r1c1 r2c1, r1c2 r2c2, r2c1 r2c2]"]),
    tiny(["consecutive-bar: { cells: r2c2 r3c2 }"], { digits: "0-3" }),
    tiny(["consecutive-bar: [r1c1 r1c2, r2c3 r3c3]"], { digits: "1 2 5 6", regions: "none" }),
    tiny(["consecutive-bar: r1c1 r2c1"], { size: 2 }),
    tiny(
      ["consecutive-bar: r1c2 r1c3"],
      [
        { id: "a", size: 2, digits: "2 6" },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
  ],
  random: (random, board) => edgeWhere(random, board, (x, y) => Math.abs(x - y) === 1)?.cells,
  example: {
    puzzle: tiny(["consecutive-bar: [r1c2 r1c3, r3c1 r4c1]"]),
    obeys: "2341\n1432\n3124\n4213",
    breaks: "2341\n4132\n1423\n3214",
  },
};
