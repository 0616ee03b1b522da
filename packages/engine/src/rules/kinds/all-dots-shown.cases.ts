import { everyWhere } from "../../../test-kit/chance.ts";
import { withAllMarks } from "../../../test-kit/chance-marks.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const steps = [
  [0, 1],
  [1, 0],
] as const;

const puzzle = tiny(
  [
    "kropke-black: [r1c1 r1c2, r2c3 r2c4, r2c4 r3c4]",
    "kropke-white: [r2c3 r3c3, r3c3 r3c4, r4c1 r4c2]",
    "all-dots-shown",
  ],
  { digits: "1 2 3 7" },
);

export const cases: KindCases = {
  boards: [
    puzzle,
    tiny(["all-dots-shown"]),
    tiny(["all-dots-shown", "kropke-white: [r1c1 r1c2, r3c3 r2c3]", "kropke-black: r2c2 r1c2"], { digits: "1 2 5 9" }),
    tiny(["all-dots-shown: { grids: [tiny] }", "kropke-black: [r1c2 r1c1, r1c4 r1c3]"], { digits: "1 2 5 7" }),
    tiny(["kropke-white: { cells: r1c1 r1c2, by: 3 }", "kropke-black: { cells: r2c1 r2c2, by: 5 }", "all-dots-shown"], {
      digits: "1 5 8 9",
      regions: "none",
    }),
    tiny(["all-dots-shown"], { digits: "0 2 5 9" }),
    tiny(["all-dots-shown"], { size: 2, digits: "0 1" }),
    tiny(
      ["all-dots-shown: { grids: [a] }", "kropke-white: { cells: r1c1 r1c2, by: 3 }"],
      [
        { id: "a", size: 2, digits: "1 4" },
        { id: "b", size: 2, at: "r1c3", digits: "2 8" },
      ],
    ),
    tiny(
      ["all-dots-shown"],
      [
        { id: "a", size: 2, digits: "1 4" },
        { id: "b", size: 2, at: "r1c3", digits: "2 8" },
      ],
    ),
  ],
  random: (_, board) =>
    everyWhere(board, steps, (x, y) => Math.abs(x - y) !== 1 && x !== 2 * y && y !== 2 * x) ? null : undefined,
  board: (random) =>
    withAllMarks(random, "all-dots-shown", (x, y) => {
      if (x === 2 * y || y === 2 * x) return "kropke-black";
      return Math.abs(x - y) === 1 ? "kropke-white" : undefined;
    }),
  example: {
    puzzle,
    obeys: "1273\n3721\n7132\n2317",
    breaks: "2173\n7321\n1732\n3217",
  },
};
