import { everyWhere } from "../../../test-kit/chance.ts";
import { withAllMarks } from "../../../test-kit/chance-marks.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const steps = [
  [0, 1],
  [1, 0],
] as const;

const puzzle = tiny(["consecutive-bar: [r1c1 r1c2, r2c3 r2c4, r2c3 r3c3]", "all-bars-shown"], { digits: "1 2 5 9" });

export const cases: KindCases = {
  boards: [
    puzzle,
    tiny(["all-bars-shown"]),
    tiny(["all-bars-shown", "consecutive-bar: [r1c1 r1c2, r3c3 r2c3]"], { digits: "1 2 5 9" }),
    tiny(["all-bars-shown: { grids: [tiny] }", "consecutive-bar: [r1c2 r1c1, r1c4 r1c3]"], { digits: "1 2 5 6" }),
    tiny(["kropke-white: r1c1 r1c2", "all-bars-shown"], { digits: "1 5 8 9", regions: "none" }),
    tiny(["all-bars-shown"], { digits: "0 2 5 9" }),
    tiny(["all-bars-shown"], { size: 2, digits: "0 1" }),
    tiny(
      ["all-bars-shown: { grids: [a] }"],
      [
        { id: "a", size: 2, digits: "1 4" },
        { id: "b", size: 2, at: "r1c3", digits: "3 4" },
      ],
    ),
    tiny(
      ["all-bars-shown"],
      [
        { id: "a", size: 2, digits: "1 4" },
        { id: "b", size: 2, at: "r1c3", digits: "3 7" },
      ],
    ),
  ],
  random: (_, board) => (everyWhere(board, steps, (x, y) => Math.abs(x - y) !== 1) ? null : undefined),
  board: (random) =>
    withAllMarks(random, "all-bars-shown", (x, y) => (Math.abs(x - y) === 1 ? "consecutive-bar" : undefined)),
  example: {
    puzzle,
    obeys: "1259\n9521\n2915\n5192",
    breaks: "1259\n5912\n9125\n2591",
  },
};
