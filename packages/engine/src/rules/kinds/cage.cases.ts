import { areaIn, isNew, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["cage: { cells: r1c1 r1c2, sum: 3 }"]),
    tiny(["cage: { cells: r1c2 r1c3 r2c3 }"], { regions: "none" }),
    tiny(["cage: [{ cells: r1c2 r2c2 r3c2, sum: 6 }, { cells: r2c3 r3c3, sum: 5 }, { cells: r4c1, sum: 3 }]"]),
    tiny(["cage: { cells: r1c1 r2c2 r3c3 r4c4, sum: 10 }"]),
    tiny(["cage: { cells: r1c1 r1c2 r2c1 r2c2 }"]),
    tiny(["cage: [{ cells: r1c1 r1c2, sum: 3 }, { cells: r2c1 r2c2, sum: 3 }]"]),
    tiny(["cage: { cells: r2c2 r2c3, sum: 1 }"], { digits: "0-3" }),
    tiny(["cage: { cells: r1c2 r2c2 r2c3, sum: 16 }"], { digits: "1 2 5 9" }),
    tiny(["cage: { cells: r1c1 r2c2 r3c3, sum: 6 }"], { size: 3 }, "{ r1c1: 1 }"),
    tiny(
      ["cage: { cells: r2c3 r2c4 r3c3, sum: 9 }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const area = areaIn(random, board, 1 + random.below(4), isNew);
    const sum = area.reduce((total, { digit }) => total + digit, 0);
    return random.below(5) === 0 ? { cells: pathOf(area) } : { cells: pathOf(area), sum };
  },
  example: {
    puzzle: tiny(["cage: { cells: r1c2 r1c3 r2c3, sum: 6 }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2143\n3412\n1234\n4321",
  },
};
