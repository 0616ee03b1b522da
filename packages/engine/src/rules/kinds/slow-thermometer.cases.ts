import { pathOf } from "../../../test-kit/chance-cells.ts";
import { lastTwo, pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["slow-thermometer: r1c1 r1c2"]),
    tiny(["slow-thermometer: r1c2 r2c3 r3c2 r4c3"]),
    tiny(["slow-thermometer: [r1c1 r2c2 r3c3, r1c4 r2c3]"]),
    tiny(["slow-thermometer: [r1c1 r1c2, r1c2 r2c2 r1c1]"]),
    tiny(["slow-thermometer: r4c1 r3c2 r2c3 r1c4 r1c3 r2c2"], { regions: "none" }),
    tiny(["slow-thermometer: r2c1 r3c2 r2c3"], { digits: "0-3" }),
    tiny(["slow-thermometer: r1c2 r2c1 r3c2 r3c1"], { size: 3 }),
    tiny(
      ["slow-thermometer: r3c1 r3c2 r3c3 r4c3"],
      [
        { id: "a", size: 3, digits: "4 5 6" },
        { id: "b", size: 3, at: "r3c3", digits: "5 6 8" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 2, most: 6, fits: lastTwo((low, high) => low <= high) });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["slow-thermometer: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "536421\n412563\n165342\n243156\n324615\n651234",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
