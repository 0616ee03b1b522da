import { pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const areLockedOut = (digits: readonly number[], by: number): boolean => {
  const [low, high] = [digits[0]!, digits.at(-1)!].sort((a, b) => a - b) as [number, number];
  return high - low >= by && digits.slice(1, -1).every((digit) => digit < low || digit > high);
};

export const cases: KindCases = {
  boards: [
    tiny(["lockout-line: { cells: r1c1-r1c3, by: 2 }"]),
    tiny(["lockout-line: { cells: r1c1-r1c3, by: 1 }"]),
    tiny(["lockout-line: [{ cells: r1c1 r2c2 r2c3 r1c3, by: 1 }, { cells: r4c1 r3c2 r3c3 r4c4, by: 1 }]"]),
    tiny(["lockout-line: [{ cells: r1c1 r2c2 r2c3 r1c4, by: 2 }, { cells: r4c1-r4c3, by: 1 }]"]),
    tiny(["lockout-line: { cells: r2c1 r1c2 r2c3 r3c3, by: 2 }"], { digits: "0-3" }),
    tiny(["lockout-line: { cells: r1c1 r2c1 r3c2, by: 5 }"], { digits: "0 3 8 9", regions: "none" }),
    tiny(
      ["lockout-line: { cells: r3c2 r3c3 r4c3, by: 1 }"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r3c3", digits: "2 3 4" },
      ],
    ),
  ],
  random: (random, board) => {
    const by = random.pick([1, 2, 3]);
    const path = pathWhere(random, board, { least: 3, most: 5, whole: (digits) => areLockedOut(digits, by) });
    return path && { cells: pathOf(path), by };
  },
  example: {
    puzzle: tiny(["lockout-line: r7c3 r6c3 r5c4 r4c5 r4c6"], { size: 9, regions: "boxes" }),
    obeys: "583627194\n964138275\n172594683\n657312849\n218945367\n349876512\n836759421\n495261738\n721483956",
    breaks: "954138627\n217654938\n836279154\n493825761\n721963485\n685741293\n148592376\n372486519\n569317842",
  },
};
