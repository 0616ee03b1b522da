import { areaIn, cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["clone: [[r1c1 r1c2, r3c3 r3c4]]"]),
    tiny(["clone: { areas: [r1c1 r1c2, r2c3 r2c4] }"]),
    tiny(["clone: [{ areas: [r1c1, r2c3, r4c4] }, { areas: [r1c2, r3c1] }]"]),
    tiny(["clone: { areas: [r1c1, r1c2] }"]),
    tiny(["clone: { areas: [r1c1 r2c3, r2c3 r3c2] }"]),
    tiny(["clone: { areas: [r1c1 r2c1 r2c2, r4c4 r3c3 r4c3] }"]),
    tiny(["clone: { areas: [r1c1 r1c2, r3c2 r3c1] }"], { digits: "0-3" }),
    tiny(["clone: { areas: [r1c1, r2c2] }"], { size: 2 }),
    tiny(
      ["clone: { areas: [r1c2 r2c1, r4c4 r2c3] }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const first = areaIn(random, board, 1 + random.below(3));
    const like = first.map(({ name, digit }) =>
      random.pick(cellsOf(board).filter((other) => other.digit === digit && other.name !== name)),
    );
    return new Set(like).size === like.length ? { areas: [pathOf(first), pathOf(like)] } : undefined;
  },
  example: {
    puzzle: tiny(["clone: { areas: [r1c1 r1c2, r2c3 r2c4] }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2143\n3412\n1234\n4321",
  },
};
