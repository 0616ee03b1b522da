import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const zips = (digits: readonly number[]): boolean => {
  const half = Math.floor(digits.length / 2);
  const sums = digits.slice(0, half).map((digit, k) => digit + digits.at(-1 - k)!);
  return new Set(digits.length % 2 === 1 ? [...sums, digits[half]!] : sums).size === 1;
};

export const cases: KindCases = {
  boards: [
    tiny(["zipper-line: r1c1-r1c3"]),
    tiny(["zipper-line: r1c1-r1c4"]),
    tiny(["zipper-line: r1c1 r2c2 r3c3 r4c4 r4c3"]),
    tiny(["zipper-line: [r1c1 r1c2 r2c3, r4c1 r3c2 r3c3 r4c4]"]),
    tiny(["zipper-line: [r1c1-r1c3, r1c2 r2c2 r3c3]"]),
    tiny(["zipper-line: [r1c1 r2c1 r2c2 r3c2 r3c3 r4c3]"]),
    tiny(["zipper-line: r2c1 r1c2 r2c3 r3c3 r3c4"], { digits: "0-3" }),
    tiny(["zipper-line: r1c1 r2c1 r3c2 r4c2"], { digits: "0 3 5 8", regions: "none" }),
    tiny(
      ["zipper-line: r3c2 r3c3 r4c4"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 3, most: 6, whole: zips });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["zipper-line: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "241365\n635124\n453612\n126543\n512436\n364251",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
