import { everyWhere } from "../../../test-kit/chance.ts";
import { withAllMarks } from "../../../test-kit/chance-marks.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const steps = [
  [0, 1],
  [1, 0],
] as const;

const puzzle = tiny(
  ["xv-v: [r1c1 r1c2, r2c3 r2c4, r2c4 r3c4]", "xv-x: [r2c3 r3c3, r3c3 r3c4, r4c1 r4c2]", "all-xv-shown"],
  { digits: "1 4 6 8" },
);

export const cases: KindCases = {
  boards: [
    puzzle,
    tiny(["all-xv-shown"]),
    tiny(["all-xv-shown", "xv-v: [r1c1 r1c2, r3c3 r2c3]"], { digits: "1 4 6 7" }),
    tiny(["all-xv-shown: { grids: [tiny] }", "xv-x: [r1c2 r1c1]", "xv-v: r4c3 r4c4"], { digits: "1 4 6 7" }),
    tiny(["all-xv-shown", "xv-x: r1c2 r1c1"], { digits: "2 4 6 7", regions: "none" }),
    tiny(["all-xv-shown"], { digits: "0 2 5 9" }),
    tiny(["all-xv-shown"], { size: 2, digits: "5 6" }),
    tiny(
      ["all-xv-shown: { grids: [a] }"],
      [
        { id: "a", size: 2, digits: "1 5" },
        { id: "b", size: 2, at: "r1c3", digits: "5 9" },
      ],
    ),
    tiny(
      ["all-xv-shown"],
      [
        { id: "a", size: 2, digits: "1 5" },
        { id: "b", size: 2, at: "r1c3", digits: "5 6" },
      ],
    ),
  ],
  random: (_, board) => (everyWhere(board, steps, (x, y) => x + y !== 5 && x + y !== 10) ? null : undefined),
  board: (random) =>
    withAllMarks(random, "all-xv-shown", (x, y) => (x + y === 10 ? "xv-x" : x + y === 5 ? "xv-v" : undefined)),
  example: {
    puzzle,
    obeys: "1486\n6841\n8164\n4618",
    breaks: "4186\n8641\n1864\n6418",
  },
};
