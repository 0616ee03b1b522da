import { cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import { sumOf } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["little-killer: { cells: r1c2-r3c4, sum: 6 }"]),
    tiny([
      "little-killer: [{ cells: r4c1-r1c4, sum: 10 }, { cells: r3c4 r4c3, sum: 5 }, { cells: r2c1 r1c2, sum: 5 }]",
    ]),
    tiny(["little-killer: [{ cells: r1c2 r2c1, sum: 8 }, { cells: r1c1-r4c4, sum: 5 }]"]),
    tiny(["little-killer: [{ cells: r2c4-r4c2, sum: 0 }]"], { digits: "0-3", regions: "none" }),
    tiny(["little-killer: { cells: r1c2-r3c4, sum: 12 }"], { digits: "1 2 5 9" }),
    tiny(["little-killer: { cells: r1c1 r2c2, sum: 4 }"], { size: 2 }),
    tiny(
      ["little-killer: [{ cells: r1c1-r5c5, sum: 12 }, { cells: r3c1-r1c3, sum: 6 }]"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r3c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const start = 1 + random.below(board.size - 1);
    const [down, right] = random.pick([
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const);
    const first = { row: down > 0 ? 1 : board.size, column: right > 0 ? start : board.size + 1 - start };
    const cells = cellsOf(board).filter(
      ({ row, column }) => (row - first.row) * down === (column - first.column) * right,
    );
    const path = down > 0 ? cells : cells.reverse();
    return { cells: pathOf(path), sum: sumOf(path.map(({ digit }) => digit)) };
  },
  example: {
    puzzle: tiny(["little-killer: [{ cells: r1c2-r3c4, sum: 6 }, { cells: r4c3 r3c4, sum: 5 }]"]),
    obeys: "1324\n4213\n3142\n2431",
    breaks: "2341\n4132\n1423\n3214",
  },
};
