import { edgeWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["kropke-black: r1c1 r1c2"]),
    tiny(["kropke-black: [r1c2 r2c2, r3c4 r3c3, r3c3 r4c3]"]),
    tiny(["kropke-black: [r1c1 r1c2, r1c2 r1c3, r1c3 r1c4]"]),
    tiny(["kropke-black: { cells: r2c2 r2c3, by: 3 }"]),
    tiny(["kropke-black: [r1c1 r2c1, { cells: r2c3 r2c4, by: 4 }, { cells: r3c4 r4c4, by: 2 }]"]),
    tiny(["kropke-black: r2c2 r3c2"], { digits: "0-3" }),
    tiny(["kropke-black: [r1c1 r1c2, r2c3 r3c3]"], { digits: "1 2 4 8", regions: "none" }),
    tiny(["kropke-black: r1c1 r2c1"], { size: 2 }),
    tiny(
      ["kropke-black: r1c2 r1c3"],
      [
        { id: "a", size: 2, digits: "2 6" },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const by = random.pick([undefined, undefined, 2, 3, 4]);
    const edge = edgeWhere(random, board, (x, y) => x === (by ?? 2) * y);
    return edge && (by === undefined ? edge.cells : { cells: edge.cells, by });
  },
  example: {
    puzzle: tiny(["kropke-black: [r1c2 r2c2, { cells: r1c3 r1c4, by: 3 }]"]),
    obeys: "4213\n3142\n1324\n2431",
    breaks: "2341\n1432\n3124\n4213",
  },
};
