import { areaIn, cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["same-digits: { areas: [r1c1 r1c2, r3c3 r3c4] }"]),
    tiny(["same-digits: { areas: [r1c1 r2c3 r3c2, r1c2 r2c4 r4c1] }"]),
    tiny(["same-digits: [{ areas: [r1c1 r1c2, r2c3 r2c4, r3c1 r4c2] }, { areas: [r1c4, r4c1] }]"]),
    tiny(["same-digits: { areas: [r1c1 r1c2, r1c3 r2c1] }"]),
    tiny(["same-digits: { areas: [r1c1 r1c2 r2c2, r2c2 r2c3 r3c3] }"]),
    tiny(["same-digits: { areas: [r1c1, r1c2] }"]),
    tiny(["same-digits: { areas: [r1c1 r2c2, r4c4 r3c1] }"], { digits: "0-3", regions: "none" }),
    tiny(["same-digits: { areas: [r1c1 r1c2, r2c1 r2c2] }"], { size: 2 }),
    tiny(
      ["same-digits: { areas: [r1c2 r2c1, r2c4 r3c3] }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const first = areaIn(random, board, 1 + random.below(4));
    const others = random.shuffled(cellsOf(board)).filter(({ name }) => first.every((cell) => cell.name !== name));
    const like = first.map(({ digit }, k) => {
      const before = first.slice(0, k).filter((cell) => cell.digit === digit).length;
      return others.filter((cell) => cell.digit === digit)[before];
    });
    const found = like.flatMap((cell) => (cell ? [cell] : []));
    return found.length === first.length ? { areas: [pathOf(first), pathOf(random.shuffled(found))] } : undefined;
  },
  example: {
    puzzle: tiny(["same-digits: { areas: [r1c2 r2c2, r3c3 r4c3] }"]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "2143\n3412\n1234\n4321",
  },
};
