import { everyWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const steps = [
  [0, 1],
  [1, 0],
] as const;

export const cases: KindCases = {
  boards: [
    tiny(["non-consecutive"]),
    tiny(["non-consecutive: { grids: [tiny] }"], { digits: "1 3 5 8" }),
    tiny(["non-consecutive"], { digits: "1 2 4 7" }),
    tiny(["non-consecutive"], { digits: "0 2 3 5", regions: "none" }),
    tiny(["non-consecutive"], { size: 2, digits: "0 1" }),
    tiny(["non-consecutive"], { size: 2, digits: "0 2" }),
    tiny(
      ["non-consecutive: { grids: [a] }"],
      [
        { id: "a", size: 3, digits: "1 3 5" },
        { id: "b", size: 3, at: "r3c3" },
      ],
    ),
    tiny(
      ["non-consecutive"],
      [
        { id: "a", size: 2, digits: "1 4" },
        { id: "b", size: 2, at: "r1c3", digits: "5 7" },
      ],
    ),
  ],
  random: (_, board) => (everyWhere(board, steps, (x, y) => Math.abs(x - y) !== 1) ? null : undefined),
  example: {
    puzzle: tiny(["non-consecutive"], { digits: "1 2 4 7" }),
    obeys: "2714\n4172\n1427\n7241",
    breaks: "2471\n7124\n1742\n4217",
  },
};
