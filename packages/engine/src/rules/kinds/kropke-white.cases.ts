import { edgeWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["kropke-white: r1c1 r1c2"]),
    tiny(["kropke-white: [r1c2 r2c2, r3c4 r3c3, r3c3 r4c3]"]),
    tiny(["kropke-white: [r1c1 r1c2, r1c1 r2c1, r1c2 r2c2, r2c1 r2c2]"]),
    tiny(["kropke-white: { cells: r2c2 r2c3, by: 3 }"]),
    tiny(["kropke-white: [r1c1 r2c1, { cells: r2c3 r2c4, by: 2 }, { cells: r3c1 r4c1, by: 1 }]"]),
    tiny(["kropke-white: [r2c2 r3c2, { cells: r1c1 r1c2, by: 3 }]"], { digits: "0-3" }),
    tiny(["kropke-white: [r1c1 r1c2, r2c3 r3c3]"], { digits: "1 2 5 6", regions: "none" }),
    tiny(["kropke-white: r1c1 r2c1"], { size: 2 }),
    tiny(
      ["kropke-white: r1c2 r1c3"],
      [
        { id: "a", size: 2, digits: "2 6" },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const by = random.pick([undefined, undefined, 1, 2, 3, 4]);
    const edge = edgeWhere(random, board, (x, y) => Math.abs(x - y) === (by ?? 1));
    return edge && (by === undefined ? edge.cells : { cells: edge.cells, by });
  },
  example: {
    puzzle: tiny(["kropke-white: [r1c2 r1c3, { cells: r2c1 r3c1, by: 2 }]"]),
    obeys: "2431\n1324\n3142\n4213",
    breaks: "2341\n4123\n1234\n3412",
  },
};
