import { areaIn, attempt, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["same-sum: { areas: [r1c1 r1c2, r3c3] }"]),
    tiny(["same-sum: { areas: [r1c1 r1c2, r2c3 r2c4, r4c1] }"]),
    tiny(["same-sum: [{ areas: [r1c1 r2c1 r2c2, r3c3 r4c3] }, { areas: [r1c4, r4c4] }]"]),
    tiny(["same-sum: { areas: [r1c1 r1c2 r1c3, r2c4] }"]),
    tiny(["same-sum: { areas: [r1c1 r1c2 r2c2, r2c2 r2c3 r3c3] }"]),
    tiny(["same-sum: { areas: [r1c1, r1c2] }"]),
    tiny(["same-sum: { areas: [r1c1 r1c2 r2c3, r4c4] }"], { digits: "0-3" }),
    tiny(["same-sum: { areas: [r1c1 r2c2, r4c4 r3c1] }"], { digits: "1 2 5 9", regions: "none" }),
    tiny(
      ["same-sum: { areas: [r1c2 r1c3, r4c5 r3c1] }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) =>
    attempt(30, () => {
      const areas = [areaIn(random, board, 1 + random.below(4)), areaIn(random, board, 1 + random.below(4))] as const;
      const [first, other] = areas.map((area) => area.reduce((sum, { digit }) => sum + digit, 0));
      const fits = first === other && areas[0].every(({ name }) => areas[1].every((cell) => cell.name !== name));
      return fits ? { areas: areas.map(pathOf) } : undefined;
    }),
  example: {
    puzzle: tiny(["same-sum: { areas: [r1c1 r1c2 r2c1, r3c3 r4c3] }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "4231\n3142\n2413\n1324",
  },
};
