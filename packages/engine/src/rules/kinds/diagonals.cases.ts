import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

/** Whether the digits from corner to corner differ. */
const differ = (size: number, digitAt: (row: number) => number): boolean =>
  new Set(Array.from({ length: size }, (_, k) => digitAt(k + 1))).size === size;

export const cases: KindCases = {
  boards: [
    tiny(["diagonals"]),
    tiny(["diagonals: { which: down }"]),
    tiny(["diagonals: { grids: [tiny], which: up }"], { digits: "0-3", regions: "none" }),
    tiny(["diagonals: { which: both }"], {}, "{ r1c1: 1, r3c3: 1 }"),
    tiny(["diagonals"], { size: 2 }),
    tiny(["diagonals"], { size: 1 }),
    tiny(["diagonals: { which: up }"], { size: 3, digits: "2 5 7" }),
    tiny(
      ["diagonals: { grids: [a], which: down }"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r2c3" },
      ],
    ),
    tiny(
      ["diagonals: { which: down }"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2-4" },
      ],
    ),
  ],
  random: (_, board) => {
    const down = differ(board.size, (row) => board.digit(row, row));
    const up = differ(board.size, (row) => board.digit(row, board.size + 1 - row));
    if (down && up) return null;
    return down ? { which: "down" } : up ? { which: "up" } : undefined;
  },
  example: {
    puzzle: tiny(["diagonals"]),
    obeys: "2341\n4123\n1432\n3214",
    breaks: "2341\n4123\n3214\n1432",
  },
};
