import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const areBetween = (digits: readonly number[]): boolean => {
  const [low, high] = [digits[0]!, digits.at(-1)!].sort((a, b) => a - b) as [number, number];
  return digits.slice(1, -1).every((digit) => low < digit && digit < high);
};

export const cases: KindCases = {
  boards: [
    tiny(["between-line: r1c1-r1c3"]),
    tiny(["between-line: r1c1-r1c4"]),
    tiny(["between-line: r1c1 r2c2 r2c3 r1c4"]),
    tiny(["between-line: [r1c1 r2c2 r1c3, r1c3 r1c2 r1c1, r4c1 r3c2 r3c3 r4c4]"]),
    tiny(["between-line: [r1c1-r1c3, r1c2-r1c4]"]),
    tiny(["between-line: r2c1 r1c2 r2c3 r3c3"], { digits: "0-3" }),
    tiny(["between-line: r1c1 r2c1 r3c2"], { digits: "0 3 8 9", regions: "none" }),
    tiny(
      ["between-line: r3c2 r3c3 r4c4"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, { least: 3, most: 5, whole: areBetween });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["between-line: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "542361\n631245\n453612\n126453\n314526\n265134",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
