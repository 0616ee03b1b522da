import { pathOf } from "../../../test-kit/chance-cells.ts";
import { lastTwo, pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["thermometer: r1c1 r1c2"]),
    tiny(["thermometer: r1c1-r4c4"]),
    tiny(["thermometer: [r1c1 r2c2 r2c3, r4c4 r3c4]"]),
    tiny(["thermometer: [r1c1 r1c2 r2c3, r2c3 r2c2 r1c1]"]),
    tiny(["thermometer: [r2c1-r2c3, r2c1 r3c1]"]),
    tiny(["thermometer: r3c1-r1c3"], { digits: "0-3" }),
    tiny(["thermometer: r1c1 r2c1 r1c2"], { digits: "0 3 7 31", regions: "none" }),
    tiny(
      ["thermometer: r1c2-r1c4"],
      [
        { id: "a", size: 2, digits: "1 2" },
        { id: "b", size: 2, at: "r1c3", digits: "2 4" },
      ],
    ),
    tiny(['thermometer: { cells: r1c1-r3c1, tint: "#7a9e5b" }'], {}, "{ r1c1: 2 }"),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 2, most: 5, fits: lastTwo((low, high) => low < high) });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["thermometer: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "542613\n631452\n453126\n126534\n314265\n265341",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
