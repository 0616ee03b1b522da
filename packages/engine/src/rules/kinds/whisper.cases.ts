import { pathOf } from "../../../test-kit/chance-cells.ts";
import { lastTwo, pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["whisper: { cells: r1c1 r1c2, by: 3 }"]),
    tiny(["whisper: { cells: r1c1 r2c2 r3c1 r4c2, by: 2 }"]),
    tiny(["whisper: [{ cells: r1c1-r1c3, by: 2 }, { cells: r3c3 r4c4, by: 3 }]"]),
    tiny(["whisper: { cells: r1c1-r1c4, by: 2 }"]),
    tiny(["whisper: { cells: r1c1-r1c3, by: 3 }"]),
    tiny(["whisper: { cells: r2c2-r2c4 r3c3, by: 1 }"]),
    tiny(["whisper: { cells: r2c1 r1c1 r2c2, by: 2 }"], { digits: "0-3" }),
    tiny(["whisper: { cells: r1c2 r2c1 r3c2, by: 6 }"], { digits: "1 2 7 8", regions: "none" }),
    tiny(
      ["whisper: { cells: r1c2 r1c3, by: 5 }"],
      [
        { id: "a", size: 2, digits: "2 6" },
        { id: "b", size: 2, at: "r1c3", digits: "1 7" },
      ],
    ),
  ],
  random: (random, board) => {
    const by = random.pick([1, 2, 2, 3]);
    const path = pathWhere(random, board, { least: 2, most: 5, fits: lastTwo((x, y) => Math.abs(x - y) >= by) });
    return path && { cells: pathOf(path), by };
  },
  example: {
    puzzle: tiny(["whisper: r8c2-r6c2 r5c3-r3c5 r3c6 r3c7"], { size: 9, regions: "boxes" }),
    obeys: "968357412\n253461987\n741829356\n614935728\n532678194\n879142563\n126793845\n385214679\n497586231",
    breaks: "975324168\n462871953\n831695724\n613249875\n529768341\n748513692\n156487239\n284936517\n397152486",
  },
};
