import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["quadruple: { at: r1c1, digits: 1 2 3 4 }"]),
    tiny(["quadruple: { at: r2c2, digits: 1 1 4 }"]),
    tiny(["quadruple: [{ at: r1c2, digits: 2 }, { at: r2c1, digits: 3 4 }, { at: r3c2, digits: 1 1 }]"]),
    tiny(["quadruple: { at: r1c1, digits: 1 1 }"]),
    tiny(["quadruple: { at: r2c2, digits: 2 2 2 }"]),
    tiny(["quadruple: { at: r2c2, digits: 0 0 3 }"], { digits: "0-3" }),
    tiny(["quadruple: { at: r3c2, digits: 5 9 }"], { digits: "1 2 5 9", regions: "none" }),
    tiny(["quadruple: { at: r1c1, digits: 1 1 2 2 }"], { size: 2 }),
    tiny(
      ["quadruple: { at: r2c3, digits: 2 4 }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const [row, column] = [1 + random.below(board.size - 1), 1 + random.below(board.size - 1)];
    const around = [
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ].map(([down, right]) => board.digit(row + down!, column + right!));
    return { at: `r${row}c${column}`, digits: random.shuffled(around).slice(0, 1 + random.below(4)) };
  },
  example: {
    puzzle: tiny(["quadruple: { at: r2c2, digits: 1 1 4 }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2143\n3412\n1234\n4321",
  },
};
