import { describe, expect, test } from "vitest";
import { placeOf } from "../puzzle/canvas.ts";
import { outlineOf } from "./outline.ts";
import type { Point } from "./shape.ts";

const cells = (names: string) => names.split(" ").map((name) => placeOf(name)!);

/** By the shoelace formula: positive when clockwise, as y runs down. */
const areaOf = (loop: readonly Point[]): number =>
  loop.reduce((sum, [x, y], k) => sum + x * loop[(k + 1) % loop.length]![1] - y * loop[(k + 1) % loop.length]![0], 0) /
  2;

describe("the outline of cells", () => {
  test("one cell has four corners", () => {
    expect(outlineOf(cells("r2c3"))).toEqual([
      [
        [2, 1],
        [3, 1],
        [3, 2],
        [2, 2],
      ],
    ]);
  });

  test("shared sides and straight corners are left out", () => {
    expect(outlineOf(cells("r1c1 r1c2 r2c2"))[0]).toHaveLength(6);
  });

  test("inset moves every edge inwards", () => {
    expect(outlineOf(cells("r1c1 r1c2"), 0.1)).toEqual([
      [
        [0.1, 0.1],
        [1.9, 0.1],
        [1.9, 0.9],
        [0.1, 0.9],
      ],
    ]);
  });

  test("an inner corner stays that far from the cell outside", () => {
    const [loop] = outlineOf(cells("r1c1 r2c1 r2c2"), 0.1);
    expect(loop).toContainEqual([0.9, 1.1]);
  });

  test("a ring has a loop round it and one round its hole, the other way", () => {
    const loops = outlineOf(cells("r1c1 r1c2 r1c3 r2c1 r2c3 r3c1 r3c2 r3c3"));
    expect(loops.map(areaOf)).toEqual([9, -1]);
  });

  test("an inset ring has the area that is left", () => {
    const loops = outlineOf(cells("r1c1 r1c2 r1c3 r2c1 r2c3 r3c1 r3c2 r3c3"), 0.1);
    expect(loops.map(areaOf).reduce((a, b) => a + b)).toBeCloseTo(2.8 ** 2 - 1.2 ** 2);
  });

  test("cells that touch at a corner are apart", () => {
    expect(outlineOf(cells("r1c1 r2c2")).map(areaOf)).toEqual([1, 1]);
    expect(outlineOf(cells("r1c2 r2c1")).map(areaOf)).toEqual([1, 1]);
  });

  test("no cells have no outline", () => {
    expect(outlineOf([])).toEqual([]);
  });
});
