import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["entropic-line: r1c1-r1c3"], { size: 3 }),
    tiny(["entropic-line: r1c1-r3c3"], { size: 3 }),
    tiny(["entropic-line: r1c1 r1c2 r2c3 r3c3 r3c2"], { size: 3 }),
    tiny(["entropic-line: [r1c1-r1c3, r1c1 r2c2 r1c2]"], { size: 3 }),
    tiny(["entropic-line: [r2c1 r2c2 r1c3, r1c1 r2c1 r2c2]"], { size: 3 }),
    tiny(["entropic-line: r3c1 r2c1 r2c2 r1c2"], { size: 3, digits: "0 5 9" }),
    tiny(
      ["entropic-line: r3c1-r3c3"],
      [
        { id: "a", size: 3, digits: "1 2 3" },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
    tiny(
      ["entropic-line: r3c3 r3c4 r4c5"],
      [
        { id: "a", size: 4, digits: "0-3", regions: "none" },
        { id: "b", size: 3, at: "r3c3", digits: "1 2 3" },
      ],
    ),
  ],
  random: (random, board) => {
    if (board.size % 3 !== 0) return undefined;
    const third = (digit: number): number => Math.ceil((3 * digit) / board.size);
    const fits = (digits: readonly number[]): boolean => {
      const last = digits.slice(-3).map(third);
      return new Set(last).size === last.length;
    };
    const path = pathWhere(random, board, { least: 3, most: 7, fits });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["entropic-line: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "135642\n624513\n543126\n216435\n351264\n462351",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
