import { describe, expect, test } from "vitest";
import { instanceOn, resolvedOn } from "../../../test-kit/instance.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Kind } from "../contract.ts";
import { cage } from "./cage.ts";
import { clone } from "./clone.ts";
import { countingCircles } from "./counting-circles.ts";
import { even } from "./even.ts";
import { extraRegion } from "./extra-region.ts";
import { fortress } from "./fortress.ts";
import { localMaximum } from "./local-maximum.ts";
import { localMinimum } from "./local-minimum.ts";
import { magicSquare } from "./magic-square.ts";
import { odd } from "./odd.ts";
import { oneOf } from "./one-of.ts";
import { ownRule } from "./own-rule.ts";
import { productCage } from "./product-cage.ts";
import { quadruple } from "./quadruple.ts";
import { sameDigits } from "./same-digits.ts";
import { sameSum } from "./same-sum.ts";
import { sumArea } from "./sum-area.ts";

const grid = (id: string, size: number, column: number, digits: readonly number[]): Grid => ({
  id,
  called: id,
  size,
  row: 1,
  column,
  digits,
});

/** 1 to 4 in columns 1 to 4, and 5 to 8 beside them in columns 5 to 8: no digit in common. */
const strangers = [grid("low", 4, 1, [1, 2, 3, 4]), grid("high", 4, 5, [5, 6, 7, 8])];
const odds = [grid("odds", 3, 1, [1, 3, 5])];
const evens = [grid("evens", 3, 1, [2, 4, 6])];
const gaps = [grid("gaps", 3, 1, [1, 5, 9])];

const faultsOf = (...on: Parameters<typeof resolvedOn>): readonly string[] => {
  const instance = resolvedOn(...on);
  return "faults" in instance
    ? instance.faults.map(({ at = [], read, right }) => `${at.join("/")}: ${read}: ${right}`)
    : [];
};

describe("what no digits can meet is a fault that says what would be right", () => {
  test.each([
    [cage, { cells: "r2c1 r2c2", sum: 8 }, 4, "sum: 8: two different digits of 1-4 reach 7 at most, not 8"],
    [cage, { cells: "r2c1 r2c2", sum: 2 }, 4, "sum: 2: two different digits of 1-4 make 3 at least, not 2"],
    [cage, { cells: "r1c1", sum: 7 }, 4, "sum: 7: one digit of 1-4 reaches 4 at most, not 7"],
    [cage, { cells: "r1c1 r1c2", sum: 8 }, gaps, "sum: 8: two different digits of 1 5 9 make 6 or 10, but not 8"],
    [
      cage,
      { cells: "r1c4 r1c5", sum: 13 },
      strangers,
      "sum: 13: two different digits of 1-4 and 5-8 reach 12 at most, not 13",
    ],
    [
      cage,
      { cells: "r1c1-r1c4 r2c1" },
      4,
      "cells: r1c1-r1c4 r2c1: cells that can all differ; five with the digits 1-4 can't",
    ],
    [
      cage,
      { cells: "r1c1-r1c5 r2c1", sum: 21 },
      strangers,
      "cells: r1c1-r1c5 r2c1: cells that can all differ; six with the digits 1-4 and 5-8 can't",
    ],
    [
      productCage,
      { cells: "r1c1 r1c2", product: 14 },
      4,
      "product: 14: multiplied, two different digits of 1-4 reach 12 at most, not 14",
    ],
    [
      productCage,
      { cells: "r1c1 r1c2", product: 5 },
      4,
      "product: 5: multiplied, two different digits of 1-4 make 4 or 6, but not 5",
    ],
    [sumArea, { cells: "r1c1 r2c2", sum: 9 }, 4, "sum: 9: two digits of 1-4 reach 8 at most, not 9"],
    [sumArea, { cells: "r1c1 r2c2", sum: 8 }, gaps, "sum: 8: two digits of 1 5 9 make 6 or 10, but not 8"],
    [
      extraRegion,
      "r1c1-r1c4 r2c1",
      4,
      "cells: r1c1-r1c4 r2c1: cells that can all differ; five with the digits 1-4 can't",
    ],
    [even, "r1c1 r1c2", odds, "cells: r1c1: a cell that can be even; this one holds 1 3 5"],
    [odd, "r2c2", evens, "cells: r2c2: a cell that can be odd; this one holds 2 4 6"],
    [oneOf, { cells: "r1c1 r1c2", digits: "2 5" }, 4, "digits/1: 5: a digit that these cells can have: 1-4"],
    [
      oneOf,
      { cells: "r1c4 r1c5", digits: "5 6" },
      strangers,
      "cells: r1c4: a cell that can be 5 or 6; this one holds 1-4",
    ],
    [
      localMaximum,
      "r1c3 r2c3 r4c1",
      4,
      "cells: r1c3 r2c3: cells that don't touch: r1c3 and r2c3 can't both be the greater",
    ],
    [localMinimum, "r1c3 r1c2", 4, "cells: r1c3 r1c2: cells that don't touch: r1c3 and r1c2 can't both be the less"],
    [localMaximum, "r1c4", strangers, "cells: r1c4: a cell that can be greater than r1c5"],
    [fortress, "r1c3 r1c4", strangers, "cells: r1c4: a cell that can be greater than r1c5"],
    [
      countingCircles,
      "r1c1 r1c2",
      gaps,
      "cells: r1c1 r1c2: two circles that digits of 1 5 9 can fill, each as often as it says",
    ],
    [clone, { areas: ["r1c1 r1c2", "r2c1"] }, 4, "areas/1: r2c1: two cells, as in the first area"],
    [clone, { areas: ["r1c1 r1c2", "r1c1 r1c2"] }, 4, "areas: r1c1 r1c2, r1c1 r1c2: areas of different cells"],
    [
      clone,
      { areas: ["r1c1", "r1c5"] },
      strangers,
      "areas: r1c1 r1c5: cells that can hold the same digit; their grids leave none",
    ],
    [
      clone,
      { areas: ["r1c1 r1c3", "r1c3 r1c5"] },
      strangers,
      "areas: r1c1 r1c3 r1c5: cells that can hold the same digit; their grids leave none",
    ],
    [sameSum, { areas: ["r1c1 r1c2", "r1c2 r1c1"] }, 4, "areas/1: r1c2 r1c1: other cells than in the areas before"],
    [
      sameSum,
      { areas: ["r1c1", "r1c5"] },
      strangers,
      "areas/1: r1c5: an area that can add up to as much as the first: 5 to 8 here, 1 to 4 there",
    ],
    [
      sameSum,
      { areas: ["r1c1 r1c2", "r1c1 r1c2 r1c3"] },
      4,
      "areas/1: r1c1-r1c3: an area that can add up to as much as the first: 1 to 4 here, 0 there, shared cells left aside",
    ],
    [
      sameSum,
      { areas: ["r1c1 r1c2", "r1c3", "r1c5 r1c6"] },
      strangers,
      "areas/2: r1c5 r1c6: an area that can add up to as much as the first: 10 to 16 here, 2 to 8 there",
    ],
    [
      sameDigits,
      { areas: ["r1c1 r1c2", "r2c1 r1c5"] },
      strangers,
      "areas/1: r2c1 r1c5: an area that can hold the digits of the first",
    ],
    [sameDigits, { areas: ["r1c1 r1c2", "r2c1 r2c2 r2c3"] }, 4, "areas/1: r2c1-r2c3: two cells, as in the first area"],
    [quadruple, { at: "r1c1", digits: "2 5" }, 4, "digits: 2 and 5: digits that these cells can have: 1-4, so no 5"],
    [
      quadruple,
      { at: "r1c4", digits: "1 2 3" },
      strangers,
      "digits: 1, 2 and 3: digits that these cells can hold together",
    ],
    [quadruple, { at: "r2c4", digits: "1" }, 4, "at: r2c4: the top left of 2x2 cells of the grids; r2c5 is in none"],
    [
      magicSquare,
      { at: "r1c1", size: 3 },
      4,
      "at: r1c1: nine cells that can make a magic square; the digits 1-4 can't",
    ],
    [magicSquare, { at: "r1c1", size: 4 }, 9, "size: 4: 3"],
    [magicSquare, { at: "r8c1", size: 3 }, 9, "at: r8c1: the top left of 3x3 cells of the grids; r10c1 is in none"],
    [
      ownRule,
      { says: "A pair.", cells: "r1c1 r1c2", allows: [[5, 5]] },
      4,
      "allows: 1 row: a row whose digits its cells can hold",
    ],
  ] as const)("$0.name $1", (kind, value, on, expected) => {
    expect(faultsOf(kind, value, on)).toContain(expected);
  });

  test("an area that shares cells with another is weighed without them", () => {
    expect(faultsOf(sameSum, { areas: ["r1c1 r1c2", "r1c2 r1c3"] }, 4)).toEqual([]);
    expect(faultsOf(sameDigits, { areas: ["r1c4 r1c5", "r1c5 r2c4"] }, strangers)).toEqual([]);
  });
});

test("an extra region with as many cells as digits is a house by the rule's id; no cage or magic square is one", () => {
  const houses = (...[kind, value, on]: Parameters<typeof instanceOn>) =>
    kind.scopes(instanceOn(kind, value, on)).flatMap((scope) => ("different" in scope ? [scope.house] : []));
  expect(houses(extraRegion, "r1c1 r2c2 r3c3 r4c4", 4)).toEqual(["extra-region/1"]);
  expect(houses(extraRegion, "r1c1 r2c2 r3c3", 4)).toEqual([undefined]);
  expect(houses(cage, { cells: "r1c1 r2c2 r3c3 r4c4", sum: 10 }, 4)).toEqual([undefined]);
  expect(houses(magicSquare, { at: "r1c1", size: 3 }, 9)).toEqual([undefined]);
});

test("the neighbours of a peak are bound with it", () => {
  expect([...instanceOn(localMaximum, "r1c1 r3c3", 4).cells].sort((a, b) => a - b)).toEqual([
    0, 1, 4, 6, 9, 10, 11, 14,
  ]);
});

const spoken = [
  [cage, { cells: "r1c1 r1c2", sum: 3 }],
  [cage, { cells: "r1c1 r1c2" }],
  [even, "r1c1 r1c3"],
  [odd, "r1c1"],
  [oneOf, { cells: "r1c1", digits: "2 5 8" }],
  [localMaximum, "r2c2"],
  [localMinimum, "r2c2 r4c4"],
  [fortress, "r1c1 r1c2"],
  [countingCircles, "r1c1 r2c2 r3c3"],
  [productCage, { cells: "r1c1 r1c2", product: 12 }],
  [sumArea, { cells: "r1c1 r1c2", sum: 12 }],
  [extraRegion, "r1c1-r9c9"],
  [extraRegion, "r1c1-r3c3"],
  [clone, { areas: ["r1c1", "r2c2"] }],
  [clone, { areas: ["r1c1", "r2c2", "r3c3"] }],
  [sameSum, { areas: ["r1c1", "r2c2"] }],
  [sameDigits, { areas: ["r1c1", "r2c2"] }],
  [quadruple, { at: "r1c1", digits: "2 2 7" }],
  [magicSquare, { at: "r1c1", size: 3 }],
] as const;

describe("what is said of the rules", () => {
  test.each<readonly [Kind, unknown, number]>(
    spoken.flatMap(
      ([kind, value]) =>
        [
          [kind, value, 1],
          [kind, value, 2],
        ] as const,
    ),
  )("$0.name/$2 $1", (kind, value, place) => {
    const words = kind.words(instanceOn(kind, value, 9, `${kind.name}/${place}`));
    const sentences = words.rule.split(/(?<=\.)\s+/);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(sentence.split(" ").length).toBeLessThanOrEqual(20);
    }
    const said = [words.rule, words.title, words.noun, words.plural, words.called ?? "", words.holds].join(" ");
    expect(said).toMatch(/^[A-Za-z0-9 .,:;']+$/);
    for (const noun of [words.noun, words.plural, words.called ?? words.noun])
      expect(noun).toMatch(/^(?!the |a |an )[a-z]/);
    expect(words.at.length).toBeGreaterThan(0);
  });
});
