import { cellsOf, isNew, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["extra-region: r1c2 r1c3 r2c3 r3c3"]),
    tiny(["extra-region: r1c1 r2c2"]),
    tiny(["extra-region: [r1c1 r2c2 r3c3, r1c4 r2c3 r3c2 r4c1]"]),
    tiny(["extra-region: r1c1 r2c2 r3c3 r4c4"], {}, "{ r1c1: 1, r4c4: 1 }"),
    tiny(["extra-region: r1c1"]),
    tiny(["extra-region: r1c2 r2c2 r2c3 r3c3"], { digits: "0-3" }),
    tiny(["extra-region: r1c1 r2c2 r3c3"], { size: 3 }),
    tiny(["extra-region: r1c1 r2c2 r3c4 r4c3"], { digits: "1 2 5 9", regions: "none" }),
    tiny(
      ["extra-region: r2c1 r2c4 r4c3"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const all = random.shuffled(cellsOf(board));
    const first = all.filter((cell, k) => isNew(cell, all.slice(0, k)));
    return pathOf(first.slice(0, random.pick([2, board.size - 1, board.size, board.size])));
  },
  example: {
    puzzle: tiny(["extra-region: r1c2 r1c3 r2c3 r3c3"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2143\n3412\n1234\n4321",
  },
};
