import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const balances = (digits: readonly number[]): boolean =>
  2 * (digits[0]! + digits.at(-1)!) === digits.reduce((sum, digit) => sum + digit);

export const cases: KindCases = {
  boards: [
    tiny(["double-arrow: r1c1-r1c3"]),
    tiny(["double-arrow: r1c1-r4c4"]),
    tiny(["double-arrow: [r1c1 r1c2 r2c2 r2c3, r4c1 r3c2 r3c3 r4c4]"]),
    tiny(["double-arrow: [r1c1-r1c4, r1c2 r2c1 r2c2]"]),
    tiny(["double-arrow: r1c1 r2c2 r1c3"], { digits: "0-3" }),
    tiny(["double-arrow: r2c1 r1c1 r1c2 r2c2 r3c2"], { digits: "0 2 3 9", regions: "none" }),
    tiny(
      ["double-arrow: r1c2-r1c4"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 3, most: 6, whole: balances });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["double-arrow: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "531624\n624153\n143265\n265341\n352416\n416532",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
