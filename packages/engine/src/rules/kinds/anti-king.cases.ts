import { everyWhere } from "../../../test-kit/chance.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const steps = [
  [0, 1],
  [1, -1],
  [1, 0],
  [1, 1],
] as const;

export const cases: KindCases = {
  boards: [
    tiny(["anti-king"]),
    tiny(["anti-king"], { regions: "none" }),
    tiny(["anti-king: { grids: [tiny] }"], { digits: "0-3", regions: "none" }, "{ r1c1: 3 }"),
    tiny(["anti-king"], { size: 5 }, "{ r1c1: 1, r1c2: 2, r1c3: 3, r1c4: 4, r1c5: 5 }"),
    tiny(
      ["anti-king"],
      [
        { id: "a", size: 1, digits: "3" },
        { id: "b", size: 1, at: "r2c2", digits: "4" },
      ],
    ),
    tiny(
      ["anti-king"],
      [
        { id: "a", size: 1, digits: "3" },
        { id: "b", size: 1, at: "r2c2", digits: "3" },
      ],
    ),
    tiny(["anti-king"], { size: 2 }),
    tiny(
      ["anti-king"],
      [
        { id: "a", size: 2, at: "r3c1" },
        { id: "b", size: 3, at: "r1c2" },
      ],
    ),
    tiny(
      ["anti-king: { grids: [b] }"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 4, at: "r2c2" },
      ],
      "{ r2c2: 2, r2c3: 3, r2c4: 1 }",
    ),
    tiny(
      ["anti-king: { grids: [a, b] }"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r1c3" },
        { id: "c", size: 2, at: "r3c1" },
      ],
    ),
    tiny(
      ["anti-king"],
      [
        { id: "a", size: 2 },
        { id: "b", size: 2, at: "r1c3", digits: "2 3" },
      ],
    ),
  ],
  random: (_, board) => (everyWhere(board, steps, (x, y) => x !== y) ? null : undefined),
  example: {
    puzzle: tiny(["anti-king"], { size: 6, regions: "boxes" }),
    obeys: "152643\n634512\n516234\n423165\n365421\n241356",
    breaks: "123456\n465132\n314265\n256314\n632541\n541623",
  },
};
