import { describe, expect, test } from "vitest";
import { cornersOf, joined, moved, runsRound } from "./runs.ts";
import type { Segment } from "./segments.ts";

test("pieces that continue each other are one line", () => {
  const pieces: Segment[] = [
    [
      [2, 1],
      [3, 1],
    ],
    [
      [0, 1],
      [1, 1],
    ],
    [
      [1, 0],
      [1, 1],
    ],
    [
      [1, 1],
      [2, 1],
    ],
    [
      [4, 1],
      [5, 1],
    ],
  ];
  expect(joined(pieces)).toEqual([
    [
      [0, 1],
      [3, 1],
    ],
    [
      [4, 1],
      [5, 1],
    ],
    [
      [1, 0],
      [1, 1],
    ],
  ]);
});

describe("runs round a closed way", () => {
  test("a run goes on across the start", () => {
    const runs = runsRound([1, 3, 2, 4, 5, 7], (n) => n % 2);
    expect(runs.map(({ steps }) => steps)).toEqual([
      [2, 4],
      [5, 7, 1, 3],
    ]);
  });

  test("all of one sort is one whole run", () => {
    expect(runsRound([2, 4, 6], (n) => n % 2)).toEqual([{ sort: 0, steps: [2, 4, 6], whole: true }]);
  });
});

const square: Segment[] = [
  [
    [0, 0],
    [1, 0],
  ],
  [
    [1, 0],
    [2, 0],
  ],
  [
    [2, 0],
    [2, 2],
  ],
  [
    [2, 2],
    [0, 2],
  ],
  [
    [0, 2],
    [0, 0],
  ],
];

test("straight corners are left out, the ends of an open way never", () => {
  expect(cornersOf(square, true)).toEqual([
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ]);
  expect(cornersOf(square.slice(0, 2), false)).toEqual([
    [0, 0],
    [2, 0],
  ]);
});

test("a clockwise way moved to its right shrinks and keeps its corners square", () => {
  expect(moved(cornersOf(square, true), 0.1, true)).toEqual([
    [0.1, 0.1],
    [1.9, 0.1],
    [1.9, 1.9],
    [0.1, 1.9],
  ]);
  expect(
    moved(
      [
        [0, 0],
        [2, 0],
        [2, 2],
      ],
      -0.1,
      false,
    ),
  ).toEqual([
    [0, -0.1],
    [2.1, -0.1],
    [2.1, 2],
  ]);
});
