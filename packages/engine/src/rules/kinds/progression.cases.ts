import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const isEven = (digits: readonly number[]): boolean =>
  digits.every((digit, k) => k < 1 || (digit !== digits[0] && digit - digits[k - 1]! === digits[1]! - digits[0]!));

export const cases: KindCases = {
  boards: [
    tiny(["progression: r1c1-r1c3"]),
    tiny(["progression: r1c1-r1c4"]),
    tiny(["progression: r1c1 r1c2 r2c3"]),
    tiny(["progression: [r1c1 r2c2 r2c3, r4c4 r3c3 r3c2]"]),
    tiny(["progression: [r1c1-r1c3, r1c2-r1c4, r2c1-r2c3]"]),
    tiny(["progression: r3c1-r1c3"], { digits: "0-3" }),
    tiny(["progression: r1c1 r2c1 r3c2"], { digits: "1 4 6 7", regions: "none" }),
    tiny(
      ["progression: r3c2 r3c3 r4c4"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 3, most: 5, fits: isEven });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["progression: r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "632451\n415326\n264513\n351642\n523164\n146235",
    breaks: "213645\n564312\n326451\n451263\n635124\n142536",
  },
};
