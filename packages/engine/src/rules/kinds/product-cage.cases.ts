import { areaIn, isNew, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["product-cage: { cells: r1c1 r1c2, product: 2 }"]),
    tiny([
      "product-cage: [{ cells: r1c2 r2c2 r3c2, product: 12 }, { cells: r2c3 r3c3, product: 4 }, { cells: r4c4, product: 2 }]",
    ]),
    tiny(["product-cage: { cells: r1c1 r2c2 r3c3 r4c4, product: 24 }"]),
    tiny(["product-cage: [{ cells: r1c1 r1c2, product: 2 }, { cells: r2c1 r2c2, product: 2 }]"]),
    tiny(["product-cage: [{ cells: r2c2 r2c3, product: 0 }, { cells: r1c1 r2c1, product: 6 }]"], { digits: "0-3" }),
    tiny(["product-cage: { cells: r1c2 r2c2 r2c3, product: 45 }"], { digits: "1 2 5 9" }),
    tiny(["product-cage: { cells: r1c1 r2c2 r3c3, product: 6 }"], { size: 3 }),
    tiny(
      ["product-cage: { cells: r2c3 r2c4 r3c3, product: 24 }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const area = areaIn(random, board, 1 + random.below(4), isNew);
    return { cells: pathOf(area), product: area.reduce((product, { digit }) => product * digit, 1) };
  },
  example: {
    puzzle: tiny(["product-cage: { cells: r1c2 r1c3 r2c3, product: 6 }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "4231\n3142\n2413\n1324",
  },
};
