import { everyWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const steps = [
  [1, -2],
  [1, 2],
  [2, -1],
  [2, 1],
] as const;

export const cases: KindCases = {
  boards: [
    tiny(["anti-knight"]),
    tiny(["anti-knight: { grids: [tiny] }"], { regions: "none" }),
    tiny(["anti-knight"], { digits: "0-3" }, "{ r1c1: 3 }"),
    tiny(["anti-knight"], {}, "{ r1c1: 1, r2c3: 1 }"),
    tiny(["anti-knight"], { size: 2 }),
    tiny(["anti-knight"], { size: 3 }),
    tiny(
      ["anti-knight"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r3c2" },
      ],
    ),
    tiny(
      ["anti-knight: { grids: [a] }"],
      [
        { id: "a", size: 4 },
        { id: "b", size: 2, at: "r4c4" },
      ],
    ),
    tiny(
      ["anti-knight: { grids: [a, b] }"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r1c3" },
        { id: "c", size: 2, at: "r3c1" },
      ],
    ),
  ],
  random: (_, board) => (everyWhere(board, steps, (x, y) => x !== y) ? null : undefined),
  example: {
    puzzle: tiny(["anti-knight"]),
    obeys: "2341\n1432\n4123\n3214",
    breaks: "2341\n4123\n1432\n3214",
  },
};
