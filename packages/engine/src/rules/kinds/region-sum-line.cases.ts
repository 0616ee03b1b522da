import { type FilledCell, pathOf } from "../../../test-kit/chance-cells.ts";
import { pathWhere } from "../../../test-kit/chance-lines.ts";
import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

/** In boxes of 2x2 on a size of 4, of 2x3 on 6. */
const boxOf = ({ row, column }: FilledCell, size: number): string =>
  `${Math.ceil(row / 2)} ${Math.ceil(column / (size / 2))}`;

const sumsOf = (cells: readonly FilledCell[], size: number): number[] => {
  const sums: number[] = [];
  for (const [k, cell] of cells.entries()) {
    if (k === 0 || boxOf(cell, size) !== boxOf(cells[k - 1]!, size)) sums.push(0);
    sums.push(sums.pop()! + cell.digit);
  }
  return sums;
};

export const cases: KindCases = {
  boards: [
    tiny(["region-sum-line: r1c1 r1c2 r1c3"]),
    tiny(["region-sum-line: r1c1-r1c4"]),
    tiny(["region-sum-line: r1c1 r1c2"]),
    tiny(["region-sum-line: r2c2"]),
    tiny(["region-sum-line: [r1c2 r2c2 r3c3, r1c2 r1c3 r2c4]"]),
    tiny(["region-sum-line: r1c2 r2c2 r2c3 r3c3"]),
    tiny(["region-sum-line: [r1c2 r1c3, r2c2 r2c3 r2c4]"]),
    tiny(["region-sum-line: r2c1 r2c2 r1c3 r1c4 r2c4"], { digits: "0-3" }),
    tiny(
      ["region-sum-line: { cells: r2c2 r2c3 r3c3 r3c2, grid: b }"],
      [
        { id: "a", size: 4, regions: "boxes" },
        { id: "b", size: 2, at: "r2c2", digits: "2 3", regions: "boxes 1x2" },
      ],
    ),
    tiny(
      ["region-sum-line: r2c2 r3c2 r3c3 r2c3"],
      [
        { id: "a", size: 4, regions: "none" },
        { id: "b", size: 2, at: "r2c2", digits: "2 3", regions: "boxes 2x1" },
      ],
    ),
  ],
  random: (random, board) => {
    const path = pathWhere(random, board, {
      least: 2,
      most: 6,
      whole: (_, cells) => new Set(sumsOf(cells, board.size)).size === 1,
    });
    return path && pathOf(path);
  },
  example: {
    puzzle: tiny(["region-sum-line: r5c2 r4c2 r3c3 r2c4 r2c5"], { size: 6, regions: "boxes" }),
    obeys: "431265\n625413\n364152\n512634\n256341\n143526",
    breaks: "635124\n421563\n143256\n562431\n354612\n216345",
  },
};
