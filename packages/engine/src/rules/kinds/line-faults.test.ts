import { describe, expect, test } from "vitest";
import { instanceOn, resolvedOn } from "../../../test-kit/instance.ts";
import { randomFrom } from "../../../test-kit/random.ts";
import { rowsObeying, upTo } from "../../../test-kit/rows.ts";
import { type Digits, digitsOf, has } from "../../board/digits.ts";
import { canvasOf } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import type { Bound, Faulty, Kind, Named } from "../contract.ts";
import { kindNamed } from "../registry.ts";

const grid = (id: string, column: number, digits: readonly number[], regions?: string): Grid => ({
  id,
  called: `the ${id} grid`,
  size: digits.length,
  row: 1,
  column,
  digits,
  ...(regions === undefined ? {} : { regions: [...regions] }),
});
const boxes = "aabbaabbccddccdd";
const apart = [grid("left", 1, [1, 2, 3]), grid("right", 4, [7, 8, 9])];
const over = [grid("left", 1, [1, 2, 3, 4], boxes), grid("right", 3, [3, 4, 5, 6], boxes)];
const of = (digits: readonly number[]): Grid[] => [grid("one", 1, digits)];

const faultsOf = (name: string, value: unknown, on: number | readonly Grid[]) =>
  (resolvedOn(kindNamed(name)!, value, on) as Faulty).faults ?? [];

const spiral = "r1c1-r1c4 r2c4-r4c4 r4c3-r4c1 r3c1";

describe("what no digits of its cells can meet is told, with what would be right", () => {
  test.each<[string, unknown, number | readonly Grid[], string]>([
    ["thermometer", "r1c1-r1c4 r2c4", 4, "a line whose digits can climb; r2c4 needs 5 or more and has 1-4"],
    ["slow-thermometer", "r1c4 r1c3", apart, "a line whose digits can climb; r1c3 needs 7 or more and has 1-3"],
    [
      "arrow",
      { total: "r1c1", along: "r1c2-r1c4 r2c4 r3c4" },
      4,
      "cells in which the total can reach the sum along: 4 at most against 5 at least",
    ],
    [
      "arrow",
      { total: "r1c1 r1c2", along: "r1c3" },
      4,
      "cells in which the sum along can reach the total: 4 at most against 11 at least",
    ],
    [
      "double-arrow",
      spiral,
      4,
      "cells in which the two ends can reach the sum between them: 8 at most against 9 at least",
    ],
    ["palindrome", "r1c3 r1c4", apart, "cells that can hold the same digit; these have 1-3 and 7-9"],
    ["renban", "r1c1-r1c4 r2c4", 4, "cells that can hold five consecutive digits; these have 1-4"],
    ["renban", "r1c1-r1c4", of([1, 2, 3, 5]), "cells that can hold four consecutive digits; these have 1 2 3 5"],
    ["whisper", "r1c1 r1c2", 4, "{ cells, by }: off the digits 1-9 the least difference must be said"],
    ["whisper", "r1c3 r1c4", apart, "{ cells, by }: off the digits 1-9 the least difference must be said"],
    ["whisper", { cells: "r1c1 r1c2", by: 4 }, 4, "by of 3 or less"],
    ["between-line", "r1c1 r1c2 r2c2", 2, "cells that can hold digits between those of the ends; these have 1 2"],
    ["lockout-line", "r1c1-r1c3", 4, "{ cells, by }: off the digits 1-9 the least difference must be said"],
    ["lockout-line", { cells: "r1c1-r1c3", by: 3 }, 4, "by of 2 or less"],
    ["lockout-line", { cells: "r1c1 r1c2 r2c2", by: 1 }, 2, "cells that leave more digits to choose from"],
    ["region-sum-line", "r1c1-r1c3", 4, "a line inside one grid that has regions"],
    ["region-sum-line", "r1c2-r1c5", over, "a line inside one grid that has regions"],
    ["region-sum-line", "r1c3 r1c4", over, "{ cells, grid }, the grid being left or right"],
    [
      "region-sum-line",
      { cells: "r1c1 r1c2", grid: "right" },
      over,
      "a grid with regions that holds the whole line: left",
    ],
    [
      "region-sum-line",
      "r1c2-r1c4",
      [grid("high", 1, [7, 8, 9, 10], boxes)],
      "runs that can have one sum; these reach 7 to 10 from r1c2 on and 14 to 20 from r1c3 on",
    ],
    ["sum-line", { cells: "r1c1-r1c4", sum: 40 }, 4, "a sum that runs of its digits can have; the nearest is 16"],
    ["sum-line", { cells: "r1c1-r1c4", sum: 0 }, 4, "a sum that runs of its digits can have; the nearest is 1"],
    ["modular-line", "r1c1 r1c2", 4, "three cells or more, as many as it divides by"],
    [
      "modular-line",
      "r1c1-r1c3",
      of([1, 4, 7]),
      "cells of which three in a row can leave all remainders when divided by 3; these have 1 4 7",
    ],
    ["entropic-line", "r1c1-r1c3", 4, "a line inside a grid whose digits can be cut in three"],
    ["parity-line", "r1c1 r1c2", of([1, 3, 5]), "cells that can be odd and even in turn; these have 1 3 5"],
    ["zipper-line", "r1c1-r1c3", of([4, 5, 6]), "pairs that can add up to the middle digit; the cells have 4-6"],
    ["zipper-line", "r1c1-r1c4", apart, "pairs that can have one sum; the cells have 1-3 and 7-9"],
    ["nabner", "r1c1-r1c6", 9, "cells that can hold six digits two or more apart; these have 1-9"],
    ["progression", "r1c1-r1c3", of([1, 2, 4]), "cells that can hold a progression of three digits; these have 1 2 4"],
  ])("%s %j", (name, value, on, right) => {
    expect(faultsOf(name, value, on).map((fault) => fault.right)).toEqual([right]);
  });

  test("the least difference goes unsaid only where every grid of every cell has the digits 1-9", () => {
    const both = [grid("usual", 1, upTo(9)), grid("small", 9, [5, 6, 7, 8])];
    const unsaid = (name: string, path: string): number => faultsOf(name, path, both).length;
    for (const name of ["whisper", "lockout-line"]) {
      expect(unsaid(name, "r1c6-r1c8")).toBe(0);
      expect(unsaid(name, "r5c9 r5c8 r5c7")).toBe(0);
      expect(unsaid(name, "r1c7-r1c9")).toBe(1);
    }
    expect(unsaid("whisper", "r5c9 r4c9")).toBe(1);
  });

  test("every pair of a palindrome that shares no digit is told", () => {
    expect(faultsOf("palindrome", "r1c2-r1c5", apart).map(({ read }) => read)).toEqual([
      "r1c2 and r1c5",
      "r1c3 and r1c4",
    ]);
  });

  test("an entropic line in two grids that cut their digits differently", () => {
    const both = [grid("left", 1, [1, 2, 3]), grid("right", 2, [2, 3, 4])];
    expect(faultsOf("entropic-line", "r1c2 r1c3 r2c3", both).map(({ right }) => right)).toEqual([
      "a line inside one grid alone; here the grids cut their digits differently",
    ]);
  });
});

/** Six cells: row 1 of a grid of the digits 0 to 5. */
const six = of([0, 1, 2, 3, 4, 5]);
const bodies: Readonly<Record<string, readonly unknown[]>> = {
  thermometer: ["r1c1 r1c2", "r1c1-r1c4"],
  "slow-thermometer": ["r1c1 r1c2", "r1c1-r1c4"],
  arrow: [
    { total: "r1c1", along: "r1c2-r1c4" },
    { total: "r1c1 r1c2", along: "r1c3 r1c4" },
  ],
  "double-arrow": ["r1c1-r1c3", "r1c1-r1c5"],
  palindrome: ["r1c1 r1c2", "r1c1-r1c5"],
  renban: ["r1c1 r1c2", "r1c1-r1c4"],
  whisper: [{ cells: "r1c1-r1c4", by: 2 }],
  "between-line": ["r1c1-r1c4"],
  "lockout-line": [{ cells: "r1c1-r1c4", by: 2 }],
  "region-sum-line": ["r1c1-r1c5"],
  "sum-line": [
    { cells: "r1c1-r1c4", sum: 5 },
    { cells: "r1c1 r1c2", sum: 0 },
  ],
  "modular-line": ["r1c1-r1c5", { cells: "r1c1-r1c5", by: 2 }, { cells: "r1c1-r1c5", by: 4 }],
  "entropic-line": ["r1c1-r1c5"],
  "parity-line": ["r1c1-r1c4"],
  "zipper-line": ["r1c1-r1c3", "r1c1-r1c4", "r1c1-r1c5"],
  nabner: ["r1c1 r1c2", "r1c1-r1c3"],
  progression: ["r1c1-r1c3", "r1c1-r1c4"],
};

/** What each cell can hold: at most three digits of 0 to 5, as where grids overlap. */
const someDomains = (seed: number): Digits[] => {
  const random = randomFrom(seed);
  return upTo(36).map(() => digitsOf(upTo(1 + random.below(3)).map(() => random.below(6))));
};

test.each(Object.entries(bodies))("%s is refused exactly where no digits of its cells obey it", (name, values) => {
  const kind: Kind = kindNamed(name)!;
  const seen = new Set<boolean>();
  for (const value of values) {
    const on = [{ ...six[0]!, regions: [..."aabbcc".repeat(6)] }];
    const sound = instanceOn(kind, value, on) as Bound & Named;
    const canvas = canvasOf(on);
    const { body } = kind.body.read(value, canvas)[0]!;
    for (let seed = 1; seed <= 60; seed++) {
      const domains = someDomains(seed);
      const within = sound.cells.map((cell) => ({
        cells: [cell],
        holds: ([digit]: readonly number[]) => has(domains[cell]!, digit!),
      }));
      const [row] = rowsObeying(
        sound.cells,
        [...within, ...kind.scopes(sound)],
        upTo(6).map((digit) => digit - 1),
      );
      const isRefused = "faults" in kind.resolve(body, { canvas, grids: on, domains, marked: () => [] });
      expect(isRefused, `${JSON.stringify(value)}, seed ${seed}`).toBe(row === undefined);
      seen.add(isRefused);
    }
  }
  expect([...seen].sort()).toEqual([false, true]);
});

test.each([
  ["r2c1 r2c2", 0],
  ["r1c2 r2c2", 0],
  ["r1c1 r2c2", 0],
  ["r2c2 r2c1", 1],
  ["r2c2 r1c2", 1],
  ["r2c1 r1c2", 1],
])("a pill listed as %s is read with %i remarks", (total, remarks) => {
  const { body } = kindNamed("arrow")!;
  const canvas = canvasOf(six);
  const read = body.read({ total, along: "r3c2 r3c3" }, canvas)[0]!;
  expect(read.faults).toEqual([]);
  expect(body.remarks!(read.body, { canvas, grids: six })).toHaveLength(remarks);
});
