import { cellsOf, pathOf } from "../../../test-kit/chance-cells.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["own-rule: The digits along the top are a secret."]),
    tiny(["own-rule: { says: These two are a pair., cells: r1c1 r1c2, allows: [[1, 2], [2, 1], [3, 4]] }"]),
    tiny([
      "own-rule: { says: These three are one of two rows., cells: r1c1 r2c3 r3c2, drawn: line, allows: [1 1 1, 2 3 4] }",
    ]),
    tiny(["own-rule: { says: These are alike., cells: r1c1 r1c2, drawn: dots, allows: [[1, 1], [2, 2]] }"]),
    tiny([
      "own-rule: { says: This is 4., cells: r2c2, allows: [[4]] }",
      "own-rule: { says: Nobody knows., cells: r3c3 r3c4, drawn: line }",
    ]),
    tiny(["own-rule: { says: These are chosen., cells: r1c1 r1c2, allows: [[0, 3], [7, 7], [3, 1]] }"], {
      digits: "0-3",
    }),
    tiny(
      ["own-rule: { says: These are chosen., cells: r1c2 r2c3 r4c4, allows: [[1, 2, 3], [2, 3, 4], [3, 2, 4]] }"],
      [
        { id: "a", size: 3, digits: "1-3" },
        { id: "b", size: 3, at: "r2c3", digits: "2-4" },
      ],
    ),
  ],
  random: (random, board) => {
    const cells = random.shuffled(cellsOf(board)).slice(0, 1 + random.below(3));
    const others = Array.from({ length: random.below(6) }, () => cells.map(() => 1 + random.below(board.size)));
    const allows = random.shuffled([cells.map(({ digit }) => digit), ...others]);
    return {
      says: "These cells hold one of some rows.",
      cells: pathOf(cells),
      drawn: random.pick(["line", "area", "dots"]),
      allows,
    };
  },
  example: {
    puzzle: tiny([
      "own-rule: { says: These two digits are both small or both large., cells: r1c1 r1c2, allows: [[1, 2], [2, 1], [3, 4], [4, 3]] }",
    ]),
    obeys: "1234\n3412\n2143\n4321",
    breaks: "4231\n3142\n2413\n1324",
  },
};
