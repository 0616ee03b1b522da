import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const areAllDifferent = (list: readonly number[]): boolean => new Set(list).size === list.length;

export const cases: KindCases = {
  boards: [
    tiny(["modular-line: r1c1-r1c3"]),
    tiny(["modular-line: r1c1-r1c4"]),
    tiny(["modular-line: r1c1 r2c2 r2c3 r1c4"]),
    tiny(["modular-line: [r1c1 r1c2 r1c3, { cells: r4c1 r3c1 r4c2 r4c3, by: 2 }]"]),
    tiny(["modular-line: { cells: r1c1 r1c2 r2c3 r3c3 r3c2, by: 4 }"]),
    tiny(["modular-line: { cells: r1c1 r1c2, by: 2 }"]),
    tiny(["modular-line: [{ cells: r1c1 r1c2, by: 2 }, { cells: r1c2 r1c3, by: 2 }, { cells: r1c4 r1c3, by: 2 }]"]),
    tiny(["modular-line: r2c1 r1c2 r1c3 r2c3"], { digits: "0-3" }),
    tiny(["modular-line: r1c1 r2c1 r3c2 r4c2"], { digits: "2 4 7 9", regions: "none" }),
    tiny(
      ["modular-line: r3c2 r3c3 r4c4"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const by = random.pick([undefined, 2, 3, 4]);
    const fits = (digits: readonly number[]): boolean =>
      areAllDifferent(digits.slice(-(by ?? 3)).map((digit) => digit % (by ?? 3)));
    const path = pathWhere(random, board, { least: by ?? 3, most: 7, fits });
    return path && (by === undefined ? pathOf(path) : { cells: pathOf(path), by });
  },
  example: {
    puzzle: tiny(["modular-line: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "534126\n126534\n341265\n265341\n652413\n413652",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
