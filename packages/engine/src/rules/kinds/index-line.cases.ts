import { lineFrom } from "../../../test-kit/chance-outside.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

export const cases: KindCases = {
  boards: [
    tiny(["index-line: { column: 1 }"]),
    tiny(["index-line: { row: 3 }"]),
    tiny(["index-line: [{ row: 1 }, { row: 2 }, { column: 4 }]"]),
    tiny(["index-line: { grid: tiny, column: 2 }"], { regions: "none" }, "{ r1c2: 1 }"),
    tiny(["index-line: { column: 3 }"], {}, "{ r1c3: 1, r1c1: 2 }"),
    tiny(["index-line: { row: 2 }"], { size: 2 }),
    tiny(
      ["index-line: [{ grid: a, row: 2 }, { grid: b, column: 1 }]"],
      [
        { id: "a", size: 3 },
        { id: "b", size: 3, at: "r2c3" },
      ],
    ),
  ],
  random: (random, board) => {
    const { line } = lineFrom(random, board);
    const number = "row" in line ? line.row : line.column;
    const places = Array.from({ length: board.size }, (_, k) => k + 1);
    const obeys = places.every((place) =>
      "row" in line
        ? board.digit(board.digit(number, place), place) === number
        : board.digit(place, board.digit(place, number)) === number,
    );
    return obeys ? line : undefined;
  },
  board: (random) => {
    const size = 4 + random.below(3);
    const line = `{ ${random.pick(["row", "column"])}: ${1 + random.below(size)} }`;
    return { grid: `size: ${size}, regions: none`, rules: [`index-line: ${line}`] };
  },
  example: {
    puzzle: tiny(["index-line: { column: 2 }"]),
    obeys: "2143\n3412\n4321\n1234",
    breaks: "2413\n1324\n3142\n4231",
  },
};
