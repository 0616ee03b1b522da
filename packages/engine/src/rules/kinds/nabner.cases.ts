import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const areApart = (digits: readonly number[]): boolean =>
  [...digits].sort((a, b) => a - b).every((digit, k, sorted) => k === 0 || digit > sorted[k - 1]! + 1);

export const cases: KindCases = {
  boards: [
    tiny(["nabner: r1c1 r1c2"]),
    tiny(["nabner: r1c2 r2c3"]),
    tiny(["nabner: r1c1"]),
    tiny(["nabner: [r1c1 r2c2, r3c3 r4c4, r1c4 r2c3]"]),
    tiny(["nabner: [r1c1 r1c2, r1c2 r1c3]"]),
    tiny(["nabner: r3c2 r2c3"], { digits: "0-3" }),
    tiny(["nabner: r3c1-r1c3"], { digits: "1 3 5 6", regions: "none" }),
    tiny(
      ["nabner: r1c2-r1c4"],
      [
        { id: "a", size: 2, digits: "2 6" },
        { id: "b", size: 2, at: "r1c3", digits: "1 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 2, most: 4, fits: areApart });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["nabner: r4c2 r3c3 r2c4"], { size: 6, regions: "boxes" }),
    obeys: "263154\n145362\n431625\n652413\n326541\n514236",
    breaks: "263145\n145326\n326451\n451263\n514632\n632514",
  },
};
